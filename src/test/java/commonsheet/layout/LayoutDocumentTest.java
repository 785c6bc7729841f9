package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The example of {@code docs/layouts.md} goes as it is told there. */
class LayoutDocumentTest {
  private static final Path RULES = Path.of("fixtures", "layouts", "rules");
  private static final Path RULE = RULES.resolve("thistlemoor.yaml");
  private static Sheet sheet;
  private static String document;

  @BeforeAll
  static void readOnce() throws SheetException, IOException {
    sheet = SheetReader.read(Path.of("fixtures", "layouts", "thistlemoor-tm18650-26.pdf"));
    document = Files.readString(Path.of("docs", "layouts.md"));
  }

  @Test
  void withoutTheRuleNoLabelIsUnderstood() throws LayoutException {
    Reading reading = read(null);
    assertEquals(List.of(), reading.records());
    assertTrue(reading.explanation().outcomes().stream().noneMatch(Outcome::matched));
  }

  @Test
  void theStarterIsTheOneShown() throws LayoutException {
    assertTrue(document.contains(StarterRule.of(sheet, read(null))), "the starter has changed");
  }

  @Test
  void theRuleIsTheOneShownAndShort() throws IOException {
    String rule = Files.readString(RULE);
    assertTrue(document.contains(rule), "the rule has changed");
    assertTrue(rule.lines().count() <= 40, "a rule needs at most 40 lines");
  }

  @Test
  void withTheRuleEveryValueIsReadRight() throws LayoutException {
    Reading reading = read(RULES);
    assertEquals("thistlemoor 1", reading.explanation().layout());
    CellRecord record = reading.records().get(0);
    assertEquals("Thistlemoor Cellwrights", record.cell().maker());
    assertEquals("TM18650-26", record.cell().model());
    assertEquals(16, record.statements().size());
    assertTrue(record.statements().stream().allMatch(s -> s.standing() == Standing.READ));

    Map<String, Double> slowPour = Map.of("dischargeRate", 0.2, "cutoffVoltage", 2.75);
    holds(record, "capacity", Statistic.NOMINAL, 2.6, slowPour);
    holds(record, "capacity", Statistic.MINIMUM, 2.5, slowPour);
    holds(record, "nominalVoltage", Statistic.NOMINAL, 3.6, Map.of());
    holds(record, "chargeVoltage", null, 4.2, Map.of());
    holds(record, "dischargeCutoffVoltage", null, 2.75, Map.of());
    holds(record, "standardChargeCurrent", Statistic.STANDARD, 1.3, Map.of());
    Map<String, Double> weather = Map.of("temperatureLow", 10.0, "temperatureHigh", 45.0);
    holds(record, "maximumChargeCurrent", Statistic.MAXIMUM, 2.6, weather);
    holds(record, "chargeCutoffCurrent", null, 0.065, Map.of());
    holds(record, "maximumContinuousDischargeCurrent", Statistic.MAXIMUM, 7.8, Map.of());
    holds(record, "maximumPulseDischargeCurrent", Statistic.MAXIMUM, 15, Map.of("duration", 10.0));
    holds(record, "internalResistanceAC", Statistic.MAXIMUM, 28, Map.of("frequency", 1000.0));
    holds(record, "mass", null, 46.5, Map.of());
    holds(record, "diameter", null, 18.4, Map.of());
    holds(record, "height", null, 65.2, Map.of());
    assertEquals(List.of(0.0, 45.0), range(record, "chargeTemperature"));
    assertEquals(List.of(-20.0, 60.0), range(record, "dischargeTemperature"));
  }

  @Test
  void theStatementsAreTracedToTheRule() throws LayoutException {
    for (Statement statement : read(RULES).records().get(0).statements()) {
      assertEquals("layout/thistlemoor/" + statement.quantity(), statement.evidence().rule());
    }
  }

  /** The document lists concepts by hand. */
  @Test
  void theConceptsItListsAreKnown() {
    int from = document.indexOf("**Concepts**");
    String list = document.substring(from, document.indexOf("All of them", from));
    StringBuilder rule = new StringBuilder("name: a\nversion: 1\ndescription: d\n");
    rule.append("recognise: {allOf: [x]}\nphrases:\n");
    String[] parts = list.split("`");
    for (int i = 3; i < parts.length; i += 2) {
      rule.append("  - {say: [w").append(i).append("], means: \"");
      rule.append(parts[i].replace('\n', ' ')).append("\"}\n");
    }
    RuleFile file = RuleFile.checked("list", rule.toString(), new RuleSchema(), new RuleMeaning());
    assertEquals(List.of(), file.problems());
  }

  private static Reading read(Path rules) throws LayoutException {
    return new RecordReader(LayoutLibrary.load(rules)).read(sheet);
  }

  private static void holds(
      CellRecord record,
      String quantity,
      Statistic statistic,
      double value,
      Map<String, Double> conditions) {
    assertTrue(
        record.statements().stream()
            .anyMatch(
                s ->
                    s.quantity().equals(quantity)
                        && s.statistic() == statistic
                        && s.value() != null
                        && Math.abs(s.value() - value) < 1e-9
                        && s.conditions().values().equals(conditions)),
        quantity + " " + statistic + " " + value + " " + conditions);
  }

  private static List<Double> range(CellRecord record, String quantity) {
    return record.statements().stream()
        .filter(s -> s.quantity().equals(quantity))
        .findFirst()
        .map(s -> List.of(s.low(), s.high()))
        .orElseThrow();
  }
}
