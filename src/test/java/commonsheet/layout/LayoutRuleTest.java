package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.sheet.Sheet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What rules change in what is read. */
class LayoutRuleTest {
  private static final String HEAD =
      """
      name: invented
      version: 1
      description: d
      recognise: {allOf: [Cell card]}
      """;

  @Test
  void aLabelIsKnownWhateverItsCaseWidthAndSpaces() {
    LayoutRule rule =
        rule("labels: [{say: [\"Cap. (0.2It)\"], quantity: capacity, statistic: minimum}]");
    assertEquals("capacity", rule.label("ＣＡＰ．（0.2 It）").map(LabelRule::quantity).orElseThrow());
    assertEquals(Optional.empty(), rule.label("Cap. (0.5It)"));
    assertEquals(Optional.empty(), rule.label("Cap. (0.2It) left"));
  }

  @Test
  void conditionsOfALabelAddToThoseThatArePrinted() {
    Statement capacity =
        one(
            """
            columns: [{say: [Aside], role: condition}]
            labels:
              - say: [Slow juice]
                quantity: capacity
                conditions: {dischargeRate: 0.2, cutoffVoltage: 3.0}
            """,
            "capacity",
            new String[] {"Slow juice", "2600 mAh", "2.75 V cut-off"});
    assertEquals(
        Map.of("dischargeRate", 0.2, "cutoffVoltage", 2.75), capacity.conditions().values());
  }

  @Test
  void aBoundPrintedBesideTheFigurePrevailsOverTheLabelsStatistic() {
    String rule = "labels: [{say: [Juice], quantity: capacity, statistic: typical}]\n";
    assertEquals(
        Statistic.MINIMUM,
        one(rule, "capacity", new String[] {"Juice", "min. 2600 mAh", ""}).statistic());
    assertEquals(
        Statistic.TYPICAL,
        one(rule, "capacity", new String[] {"Juice", "2600 mAh", ""}).statistic());
  }

  @Test
  void aUnitOfTheLabelGivesWayToAPrintedOne() {
    String rule = "labels: [{say: [Juice], quantity: capacity, unit: mAh}]\n";
    assertEquals(2.6, one(rule, "capacity", new String[] {"Juice", "2600", ""}).value());
    assertEquals(2.6, one(rule, "capacity", new String[] {"Juice", "2.6 Ah", ""}).value());
  }

  @Test
  void conditionsOfAColumnHoldForItsOwnFigures() {
    Sheet sheet =
        sheet(
            new String[] {"Trait", "Cold", "Warm"}, new String[] {"Juice", "2000 mAh", "2600 mAh"});
    String rule =
        """
        labels: [{say: [Juice], quantity: capacity}]
        columns:
          - {say: [Trait], role: label}
          - {say: [Cold], role: value, conditions: {temperature: 0}}
          - {say: [Warm], role: value, conditions: {temperature: 23}}
        """;
    List<Double> temperatures =
        read(rule, sheet).stream()
            .filter(s -> s.quantity().equals("capacity"))
            .map(s -> s.conditions().get("temperature"))
            .toList();
    assertEquals(List.of(0.0, 23.0), temperatures);
  }

  @Test
  void aColumnToIgnoreGivesNothing() {
    Sheet sheet =
        sheet(
            new String[] {"Trait", "Ours", "Theirs"},
            new String[] {"Juice", "2600 mAh", "9900 mAh"});
    String rule =
        """
        labels: [{say: [Juice], quantity: capacity}]
        columns:
          - {say: [Trait], role: label}
          - {say: [Ours], role: value}
          - {say: [Theirs], role: ignore}
        """;
    assertEquals(
        List.of(2.6),
        read(rule, sheet).stream()
            .filter(s -> s.quantity().equals("capacity"))
            .map(Statement::value)
            .toList());
  }

  @Test
  void whatIsToBeIgnoredIsSaidToBe() {
    LayoutRule rule = rule("ignore: [Kettle]");
    Sheet sheet = sheet(new String[] {"Kettle voltage", "3.7 V", ""});
    Outcome outcome =
        reader(rule).read(sheet).explanation().outcomes().stream()
            .filter(o -> o.label().startsWith("Kettle"))
            .findFirst()
            .orElseThrow();
    assertEquals("ignored by layout invented", outcome.result());
  }

  @Test
  void aLabelMeansNothingInsideAnother() {
    LayoutRule rule = rule("labels: [{say: [Charge], quantity: maximumChargeCurrent}]");
    Sheet sheet = sheet(new String[] {"Charge voltage", "4.2 V", ""});
    List<Outcome> outcomes = reader(rule).read(sheet).explanation().outcomes();
    assertEquals("table/chargeVoltage", outcomes.get(outcomes.size() - 1).result());
  }

  private static Statement one(String rule, String quantity, String[] row) {
    Sheet sheet = sheet(new String[] {"Trait", "Figure", "Aside"}, row);
    return read(rule, sheet).stream()
        .filter(statement -> statement.quantity().equals(quantity))
        .findFirst()
        .orElseThrow();
  }

  private static List<Statement> read(String rule, Sheet sheet) {
    Reading reading = reader(rule(rule)).read(sheet);
    assertEquals(null, reading.reason());
    return reading.records().get(0).statements();
  }

  /** The rows, and enough of a cell to make a record. */
  private static Sheet sheet(String[]... rows) {
    return Sheets.of(
        List.of(
            "Cell card",
            "Nominal voltage: 3.6 V",
            "Charge voltage: 4.2 V",
            "Maximum charge current: 2.6 A"),
        rows);
  }

  private static RecordReader reader(LayoutRule rule) {
    return new RecordReader(new LayoutLibrary(List.of(rule), List.of()));
  }

  private static LayoutRule rule(String text) {
    RuleFile file = RuleFile.checked("rule", HEAD + text, new RuleSchema(), new RuleMeaning());
    assertEquals(List.of(), file.problems());
    return file.rule().orElseThrow();
  }
}
