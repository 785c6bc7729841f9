package commonsheet.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import commonsheet.record.Conditions;
import commonsheet.record.Statistic;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TruthTest {
  private static final String HEADER =
      "quantity,statistic,value,low,high,unit,conditions,page,text\n";

  @TempDir Path folder;

  @Test
  void aTruthFileIsReadAsItStands() throws Exception {
    Truth truth =
        Truth.load(
            file(
                "heron.truth.csv",
                "\uFEFF"
                    + HEADER
                    + "cell.maker,,\"Tarn Cells, Ltd\",,,,,1,\"Tarn Cells, Ltd\"\n"
                    + "capacity,minimum,2.5,,,A.h,dischargeRate=0.2; cutoffVoltage=2.5,2,\"a\nb\"\n"
                    + "chargeTemperature,,,-20,45,Cel,,3,-20~45\n"));
    assertEquals("heron", truth.sheet());
    assertNull(truth.model());
    assertEquals(
        List.of(new TruthField("cell.maker", "Tarn Cells, Ltd", 1, "Tarn Cells, Ltd")),
        truth.fields());
    assertEquals(
        new TruthRow(
            "capacity",
            Statistic.MINIMUM,
            2.5,
            null,
            null,
            "A.h",
            new Conditions(Map.of("dischargeRate", 0.2, "cutoffVoltage", 2.5)),
            2,
            "a\nb"),
        truth.rows().get(0));
    assertEquals(-20.0, truth.rows().get(1).low());
  }

  /** {@code |} stands for a comma, so that the rows fit the source of this test. */
  @ParameterizedTest
  @CsvSource({
    "capacity|best|2.5|||A.h||1|x, 'statistic \"best\" is not one of nominal, typical, rated,"
        + " minimum, maximum, standard'",
    "capacity||2.5 Ah|||A.h||1|x, 'value must be a number such as 2.5 or -20, not \"2.5 Ah\"'",
    "capacity|||||||1|x, capacity has neither value nor low nor high",
    "capacity|||3|2|A.h||1|x, low is greater than high",
    "capacity||2.5|||||1|x, capacity has no unit",
    "capacity||2.5|||A.h|speed=3|1|x, '\"speed\" is no condition; the conditions are"
        + " dischargeCurrent, dischargeRate, chargeCurrent, chargeRate, cutoffVoltage,"
        + " chargeVoltage, temperature, temperatureLow, temperatureHigh, duration, frequency,"
        + " retention, cycles, stateOfCharge'",
    "capacity||2.5|||A.h|0.2C|1|x, 'condition \"0.2C\" is not of the form name=value'",
    "capacity||2.5|||A.h|cycles=3;cycles=4|1|x, condition cycles stands twice",
    "capacity||2.5|||A.h|||x, 'page must be a whole number from 1, not \"\"'",
    "capacity||2.5|||A.h||0|x, 'page must be a whole number from 1, not \"0\"'",
    "cell.colour||blue|||||1|x, '\"cell.colour\" is not one of cell.maker, cell.model,"
        + " cell.designation, cell.chemistry, cell.form, cell.sizeCode'",
    "cell.maker|||||||1|x, cell.maker has no text in the column value",
    "|||||||1|x, names no quantity",
    "capacity|2.5, has 2 columns instead of 9; put a text that holds a comma in quotation marks",
    "'capacity||2.5|||A.h||1|\"x', 'a quotation mark is not closed or stands in the wrong place'"
  })
  void aRowThatMakesNoSenseIsNamedByItsLine(String row, String problem) throws Exception {
    Path file = file("bad.truth.csv", HEADER + "mass,,48,,,g,,1,48 g\n" + row.replace('|', ','));
    assertEquals(file + ", line 3: " + problem, loadFault(file));
  }

  @Test
  void theLineIsThatWhereTheRowBegins() throws Exception {
    Path file =
        file("bad.truth.csv", HEADER + "mass,,48,,,g,,1,\"48\ng\"\n\ncapacity,,,,,A.h,,1,x\n");
    assertEquals(file + ", line 5: capacity has neither value nor low nor high", loadFault(file));
  }

  @Test
  void aFileThatIsNoTruthIsSaidSo() throws Exception {
    String columns = HEADER.strip();
    Path empty = file("empty.truth.csv", "");
    assertEquals(empty + ": is empty; its first line must be " + columns, loadFault(empty));
    Path other = file("other.truth.csv", "a,b\n");
    assertEquals(other + ", line 1: the columns must be " + columns, loadFault(other));
    Path latin = folder.resolve("latin.truth.csv");
    Files.write(latin, (HEADER + "é").getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(latin + ": is not UTF-8 text; save it as UTF-8", loadFault(latin));
    Path absent = folder.resolve("absent.truth.csv");
    assertEquals(absent + ": there is no such truth file", loadFault(absent));
  }

  @Test
  void aSheetHasOneTruthOrOnePerModel() throws Exception {
    file("heron.truth.csv", HEADER);
    file("family.HERON-35.truth.csv", HEADER);
    file("family.HERON-26.truth.csv", HEADER);
    file("family.charts.csv", "");
    assertEquals(List.of("heron"), sheets("heron.pdf"));
    assertEquals(List.of("heron"), sheets("elsewhere/heron.PDF"));
    assertEquals(List.of("family.HERON-26", "family.HERON-35"), sheets("family.pdf"));
    assertEquals("HERON-26", Truths.forSheet(folder, "family.pdf").get(0).model());
    assertEquals(List.of(), sheets("her.pdf"));
    Path absent = folder.resolve("absent");
    TruthException fault =
        assertThrows(TruthException.class, () -> Truths.forSheet(absent, "heron.pdf"));
    assertEquals(
        absent + ": is no folder that can be read; give the truths' folder", fault.getMessage());
  }

  private List<String> sheets(String sheet) throws TruthException {
    return Truths.forSheet(folder, sheet).stream().map(Truth::sheet).toList();
  }

  private Path file(String name, String content) throws IOException {
    return Files.writeString(folder.resolve(name), content);
  }

  private static String loadFault(Path file) {
    return assertThrows(TruthException.class, () -> Truth.load(file)).getMessage();
  }
}
