package commonsheet.export;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Review;
import commonsheet.record.Source;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.record.WordSource;
import java.util.ArrayList;
import java.util.List;

/** Records of invented cells that a lake-survey society might compare for its survey boat. */
public final class Cells {
  private final Cell cell;
  private final String file;
  private final List<Statement> statements = new ArrayList<>();
  private Review review = Review.DRAFT;
  private Integer page = 1;

  private Cells(Cell cell, String file) {
    this.cell = cell;
    this.file = file;
  }

  /** A round cell whose sheet says nearly everything. */
  public static CellRecord heron() {
    return new Cells(
            new Cell("Tarn Cells", "Heron 26", "INR19/66", "Li-ion", "cylindrical", "18650", null),
            "tarn-heron-26.pdf")
        .page(2)
        .say("capacity", Statistic.MINIMUM, 2.5, "A.h", "dischargeRate=0.2;cutoffVoltage=2.5")
        .say("capacity", Statistic.TYPICAL, 2.6, "A.h", "dischargeRate=0.2;cutoffVoltage=2.5")
        .say("capacity", Statistic.MINIMUM, 2.35, "A.h", "dischargeCurrent=10;cutoffVoltage=2.5")
        .say("nominalVoltage", Statistic.NOMINAL, 3.6, "V", "")
        .within("chargeVoltage", 4.2, 4.15, 4.25, "V", "")
        .say("dischargeCutoffVoltage", null, 2.5, "V", "")
        .say("standardChargeCurrent", Statistic.STANDARD, 1.25, "A", "chargeRate=0.5")
        .say(
            "maximumChargeCurrent",
            Statistic.MAXIMUM,
            0.75,
            "A",
            "temperatureLow=0;temperatureHigh=10")
        .say(
            "maximumChargeCurrent",
            Statistic.MAXIMUM,
            4,
            "A",
            "temperatureLow=10;temperatureHigh=45")
        .say("chargeCutoffCurrent", null, 0.05, "A", "")
        .say("standardDischargeCurrent", Statistic.STANDARD, 0.5, "A", "dischargeRate=0.2")
        .say("maximumContinuousDischargeCurrent", Statistic.MAXIMUM, 20, "A", "")
        .say("maximumContinuousDischargeCurrent", Statistic.MAXIMUM, 30, "A", "temperatureHigh=80")
        .say("maximumPulseDischargeCurrent", Statistic.MAXIMUM, 45, "A", "duration=10")
        .page(3)
        .say("internalResistanceAC", Statistic.MAXIMUM, 18, "mOhm", "frequency=1000")
        .say("internalResistanceDC", Statistic.TYPICAL, 24, "mOhm", "duration=1;stateOfCharge=50")
        .within("mass", 45.0, 44.0, 46.0, "g", "")
        .within("diameter", 18.3, 18.1, 18.4, "mm", "")
        .say("height", Statistic.MAXIMUM, 65.2, "mm", "")
        .within("chargeTemperature", null, 0.0, 45.0, "Cel", "")
        .within("dischargeTemperature", null, -20.0, 75.0, "Cel", "")
        .within("storageTemperature", null, -20.0, 60.0, "Cel", "duration=2592000")
        .within("storageTemperature", null, -20.0, 25.0, "Cel", "duration=31536000")
        .say("cycleLife", Statistic.MINIMUM, 300, "1", "dischargeCurrent=10;retention=60")
        .approved()
        .record("tarn-cells-heron-26");
  }

  /** A pouch cell with several unsure values and much that its sheet leaves unsaid. */
  public static CellRecord egret() {
    return new Cells(
            new Cell("湖光电池", "EG-604050", null, "Lithium polymer", "pouch", null, null),
            "eg604050_v2.pdf")
        .say("capacity", Statistic.NOMINAL, 1.2, "A.h", "dischargeRate=0.2")
        .unsure("capacity", null, 1.15, "A.h", "")
        .say("nominalVoltage", Statistic.NOMINAL, 3.7, "V", "")
        .say("chargeVoltage", Statistic.MAXIMUM, 4.2, "V", "")
        .unsure("maximumChargeCurrent", null, 1.2, "A", "chargeRate=1")
        .unsure("maximumPulseDischargeCurrent", Statistic.MAXIMUM, 3.6, "A", "")
        .say("internalResistanceAC", Statistic.MAXIMUM, 60, "mOhm", "")
        .say("thickness", Statistic.MAXIMUM, 6, "mm", "")
        .say("thickness", Statistic.MAXIMUM, 6.4, "mm", "cycles=300")
        .say("width", Statistic.MAXIMUM, 40.5, "mm", "")
        .unsure("length", null, 50, "mm", "")
        .rejected("mass", 500, "g")
        .within("chargeTemperature", null, 0.0, 45.0, "Cel", "")
        .record("eg-604050");
  }

  /** A large iron phosphate cell with awkward printed words. */
  public static CellRecord bittern() {
    return new Cells(
            new Cell(
                "=Fen|Energy*\nCo., \"Ltd\"",
                "Bittern <50>",
                null,
                "LiFePO4",
                "prismatic",
                null,
                null),
            "bittern_50.pdf")
        .say("capacity", Statistic.RATED, 50, "A.h", "dischargeRate=0.3333")
        .say("nominalVoltage", Statistic.NOMINAL, 3.2, "V", "")
        .within("chargeVoltage", 3.65, 3.6, 3.7, "V", "")
        .within("dischargeCutoffVoltage", 2.5, null, 3.0, "V", "temperature=25")
        .say("maximumContinuousDischargeCurrent", Statistic.MAXIMUM, 150, "A", "dischargeRate=3")
        .say("mass", Statistic.TYPICAL, 1395, "g", "")
        .within("dischargeTemperature", null, -20.0, null, "Cel", "")
        .say("cycleLife", Statistic.MINIMUM, 4000, "1", "dischargeRate=1;retention=80")
        .record("fen-bittern-50");
  }

  /** A record that holds next to nothing. */
  public static CellRecord blank() {
    return new CellRecord(
        CellRecord.SCHEMA, "blank", null, null, List.of(), List.of(), List.of(), null);
  }

  /** The same record, of a sheet with this SHA-256. */
  public static CellRecord withSheet(CellRecord record, String sha256) {
    Source source = record.source();
    return new CellRecord(
        record.schema(),
        record.id(),
        record.cell(),
        new Source(null, null, "1.2", null, source.file(), sha256, source.pages(), "en", null),
        record.statements(),
        record.curves(),
        record.findings(),
        record.review());
  }

  public static CellRecord inUnit(String unit) {
    return new Cells(new Cell(null, null, null, null, null, null, null), "x.pdf")
        .say("capacity", null, 2500, unit, "")
        .record("x");
  }

  private Cells page(int number) {
    page = number;
    return this;
  }

  private Cells say(
      String quantity, Statistic statistic, double value, String unit, String conditions) {
    return add(quantity, statistic, value, null, null, unit, conditions, Standing.READ);
  }

  private Cells unsure(
      String quantity, Statistic statistic, double value, String unit, String conditions) {
    return add(quantity, statistic, value, null, null, unit, conditions, Standing.UNSURE);
  }

  private Cells rejected(String quantity, double value, String unit) {
    return add(quantity, null, value, null, null, unit, "", Standing.REJECTED);
  }

  private Cells within(
      String quantity, Double value, Double low, Double high, String unit, String conditions) {

    return add(quantity, null, value, low, high, unit, conditions, Standing.READ);
  }

  private Cells add(
      String quantity,
      Statistic statistic,
      Double value,
      Double low,
      Double high,
      String unit,
      String conditions,
      Standing standing) {
    Conditions all = Conditions.NONE;
    for (String condition : conditions.isEmpty() ? new String[0] : conditions.split(";")) {
      String[] nameAndValue = condition.split("=");
      all = all.with(nameAndValue[0], Double.parseDouble(nameAndValue[1]));
    }
    Evidence evidence =
        new Evidence(
            page,
            List.of(),
            "as printed",
            Method.TABLE_CELL,
            "table/" + quantity,
            WordSource.TEXT,
            null,
            null,
            null);
    statements.add(
        new Statement(
            "s" + (statements.size() + 1),
            quantity,
            statistic,
            value,
            low,
            high,
            unit,
            all,
            evidence,
            standing,
            standing == Standing.UNSURE ? List.of("The unit is not printed.") : List.of()));
    return this;
  }

  private Cells approved() {
    review = new Review("approved", "R. Ibsen", "2026-03-02", "M. Okafor", "2026-03-09", "ab12");
    return this;
  }

  private CellRecord record(String id) {
    return new CellRecord(
        CellRecord.SCHEMA,
        id,
        cell,
        new Source(null, null, null, null, file, null, 4, "en", null),
        statements,
        List.of(),
        List.of(),
        review);
  }
}
