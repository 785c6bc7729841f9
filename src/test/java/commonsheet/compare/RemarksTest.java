package commonsheet.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Review;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RemarksTest {
  private static final Conditions FULL =
      Conditions.NONE.with(Conditions.CHARGE_VOLTAGE, 4.2).with(Conditions.TEMPERATURE, 25);

  @Test
  void cellsOfOneKindNeedNoRemark() {
    assertEquals(List.of(), on(cell("a", "pouch", 3.6, FULL), cell("b", "pouch", 3.7, FULL)));
  }

  @Test
  void mixedFormsAreComparedWithAWord() {
    String remark = only(cell("a", "cylindrical", 3.6, FULL), cell("b", "pouch", 3.6, FULL));
    assertTrue(remark.startsWith("The cells are of different forms (cylindrical: a; pouch: b)"));
  }

  @Test
  void aCutOffOnThePlateauIsTold() {
    String remark = only(cell("a", "pouch", 3.6, FULL), cell("lfp", "pouch", 3.2, FULL));
    assertTrue(remark.contains("A cut-off of 3 V lies on the voltage plateau of lfp"), remark);
  }

  @Test
  void aCutOffBelowWhatTheSheetAllowsIsTold() {
    String remark = only(ending("a", 3.2), cell("b", "pouch", 3.6, FULL));
    assertTrue(remark.contains("below the end of discharge that the sheets allow for a"), remark);
  }

  @Test
  void curvesThatStartFromDifferentVoltagesAreTold() {
    Conditions more = FULL.with(Conditions.CHARGE_VOLTAGE, 4.35);
    String remark = only(cell("a", "pouch", 3.6, FULL), cell("b", "pouch", 3.6, more));
    assertTrue(remark.contains("(4.2 V: a; 4.35 V: b)"), remark);
    Conditions near = FULL.with(Conditions.CHARGE_VOLTAGE, 3.65);
    assertTrue(
        on(cell("a", "pouch", 3.6, FULL), cell("lfp", "pouch", 3.2, near)).stream()
            .noneMatch(r -> r.contains("charge voltages")),
        "an iron phosphate cell is full at a voltage of its own");
  }

  @Test
  void aTemperatureThatNoChartNamesIsTold() {
    Conditions unnamed = Conditions.NONE.with(Conditions.CHARGE_VOLTAGE, 4.2);
    String remark = only(cell("a", "pouch", 3.6, unnamed), cell("b", "pouch", 3.6, FULL));
    assertTrue(remark.contains("do not say at which temperature a were discharged"), remark);
  }

  private static List<String> on(CellFigures... cells) {
    return Remarks.on(Judged.USUAL, List.of(cells));
  }

  private static String only(CellFigures... cells) {
    List<String> remarks = on(cells);
    assertEquals(1, remarks.size(), remarks.toString());
    return remarks.get(0);
  }

  private static CellFigures cell(String id, String form, double nominal, Conditions curve) {
    CellRecord bare = Judged.record(id, form);
    return figures(
        new CellRecord(
            bare.schema(),
            id,
            bare.cell(),
            null,
            List.of(),
            List.of(discharge(curve)),
            List.of(),
            Review.DRAFT),
        nominal);
  }

  private static CellFigures ending(String id, double voltage) {
    CellRecord bare = Judged.record(id, "pouch");
    Statement end =
        new Statement(
            "s1",
            "dischargeCutoffVoltage",
            null,
            voltage,
            null,
            null,
            "V",
            Conditions.NONE,
            new Evidence(1, null, "3.2 V", Method.TABLE_CELL, "test", null, null, null, null),
            Standing.READ,
            List.of());
    return figures(
        new CellRecord(
            bare.schema(),
            id,
            bare.cell(),
            null,
            List.of(end),
            List.of(discharge(FULL)),
            List.of(),
            Review.DRAFT),
        3.6);
  }

  private static Curve discharge(Conditions conditions) {
    return new Curve(
        "c1",
        "discharge",
        null,
        conditions,
        new Curve.Axis("capacity", "A.h", List.of()),
        new Curve.Axis("voltage", "V", List.of()),
        List.of(List.of(0.0, 4.1), List.of(2.0, 3.0)),
        new Curve.Uncertainty(0, 0),
        Method.VECTOR_CURVE,
        Evidence.derived("test", null, List.of()),
        Standing.READ,
        List.of());
  }

  private static CellFigures figures(CellRecord record, double nominal) {
    Figure delivered = new Figure(2.0, null, null, Origin.CURVE, List.of("c1"), List.of(), false);
    return new CellFigures(
        record,
        Judged.USUAL,
        Map.of(
            Measure.NOMINAL_VOLTAGE, Judged.known(nominal), Measure.DELIVERED_CAPACITY, delivered));
  }
}
