package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.WithNull;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordIdsTest {
  @ParameterizedTest
  @CsvSource({
    "Tarn Cells, TC-26E, x.pdf, tarn-cells-tc-26e",
    "Tarn Cells, Tarn Cells TC-26E, x.pdf, tarn-cells-tc-26e",
    "Schönwasser Größe AG, ＴＣ－２６Ｅ, x.pdf, schonwasser-grosse-ag-tc-26e",
    "Øre & Łódź, 18650/25R, x.pdf, ore-lodz-18650-25r",
    "Tarn Cells, 25R+, x.pdf, tarn-cells-25r-plus",
    ", TC-26E, x.pdf, tc-26e",
    "Tarn Cells, , Leaflet 3 (final).PDF, leaflet-3-final",
    "Tarn Cells, 电池, leaflet.pdf, leaflet",
    "湖泊电池, TC-26E, x.pdf, tc-26e",
    ", , con.pdf, cell-con",
    ", , sheets/b.pdf, sheets-b",
    ", , archive.tar.gz, archive-tar",
  })
  void namesTheCell(String maker, String model, String file, String id) {
    assertEquals(id, RecordIds.of(maker, model, file));
  }

  @Test
  void namesACellWithoutALatinLetterByItsHash() {
    String id = RecordIds.of("湖泊", "电池", "规格书.pdf");
    assertTrue(id.matches("cell-[0-9a-f]{8}"), id);
    assertNotEquals(id, RecordIds.of("湖泊", "电池", "规格书二.pdf"));
    assertTrue(RecordIds.of(null, null, null).matches("cell-[0-9a-f]{8}"));
  }

  @Test
  void keepsLongNamesApart() {
    String maker = "Upper Lakes Electrochemical Energy Storage Technology Company Limited";
    String model = "A".repeat(90);
    String id = RecordIds.of(maker, model + "1", "x.pdf");
    assertEquals(RecordIds.MAX_LENGTH, id.length());
    assertNotEquals(id, RecordIds.of(maker, model + "2", "x.pdf"));
    assertEquals(
        "upper-lakes-electrochemical-energy-tc-26e", RecordIds.of(maker, "TC-26E", "x.pdf"));
  }

  @Property
  void isSafeAsAFileNameWhateverThePrintedNames(
      @ForAll @WithNull String maker,
      @ForAll @WithNull String model,
      @ForAll @WithNull String file) {
    String id = RecordIds.of(maker, model, file);
    assertTrue(id.matches("[a-z0-9]+(-[a-z0-9]+)*"), id);
    assertTrue(id.length() <= RecordIds.MAX_LENGTH, id);
    assertEquals(id, RecordIds.of(maker, model, file));
  }
}
