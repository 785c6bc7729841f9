package commonsheet.check;

import static commonsheet.record.Statistic.MAXIMUM;
import static commonsheet.record.Statistic.MINIMUM;
import static commonsheet.record.Statistic.NOMINAL;
import static commonsheet.record.Statistic.STANDARD;
import static commonsheet.record.Statistic.TYPICAL;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Each rule finds a sound record that was broken in the way it looks for, and says nothing of the
 * sound one. The sound cell and its curves are an ordinary 18650.
 */
class RulesTest {
  private static final double[] SLOW = {0, 4.15, 0.5, 3.9, 1.3, 3.65, 2.2, 3.4, 2.6, 2.75};
  private static final double[] FAST = {0, 3.95, 0.5, 3.72, 1.3, 3.47, 2.1, 3.15, 2.45, 2.75};
  private static final double[] COLD = {0, 3.8, 0.5, 3.55, 1.3, 3.3, 1.8, 3.0, 2.0, 2.75};

  /** The broken records, by the rule that finds them; a rule may have several. */
  private static final Map<String, List<UnaryOperator<Invented>>> BROKEN = broken();

  private static Map<String, List<UnaryOperator<Invented>>> broken() {
    Map<String, List<UnaryOperator<Invented>>> broken = new LinkedHashMap<>();
    Break of = (rule, change) -> broken.computeIfAbsent(rule, r -> new ArrayList<>()).add(change);
    orders(of);
    reach(of);
    relations(of);
    cells(of);
    slips(of);
    trends(of);
    curves(of);
    return broken;
  }

  /** Adds a way to break a record. */
  private interface Break {
    void by(String rule, UnaryOperator<Invented> change);
  }

  private static void orders(Break of) {
    of.by("order/cutoff-and-nominal-voltage", r -> r.butSays("dischargeCutoffVoltage", null, 3.7));
    of.by("order/nominal-and-charge-voltage", r -> r.butSays("chargeVoltage", null, 3.6));
    of.by(
        "order/standard-and-maximum-charge-current",
        r -> r.says("maximumChargeCurrent", MAXIMUM, 1.0));
    of.by(
        "order/standard-and-maximum-discharge-current",
        r -> r.says("standardDischargeCurrent", STANDARD, 7));
    of.by(
        "order/continuous-and-pulse-current",
        r -> r.says("maximumPulseDischargeCurrent", MAXIMUM, 4, "duration", 10));
    of.by(
        "order/cutoff-and-standard-charge-current", r -> r.says("chargeCutoffCurrent", null, 1.3));
    of.by(
        "order/charge-and-discharge-temperature",
        r -> r.range("chargeTemperature", -20, 60).range("dischargeTemperature", 0, 45));
    of.by(
        "order/charge-and-discharge-temperature",
        r -> r.range("chargeTemperature", 0, 45).range("dischargeTemperature", 20, 60));
    of.by("order/statistics", r -> r.butSays("mass", MINIMUM, 47).says("mass", MAXIMUM, 45));
    of.by(
        "order/statistics",
        r -> r.butSays("capacity", TYPICAL, 2.5).says("capacity", NOMINAL, 2.6));
  }

  private static void reach(Break of) {
    of.by("reach/any-cell", r -> r.butSays("nominalVoltage", NOMINAL, 36));
    of.by("reach/any-cell", r -> r.butSays("dischargeCutoffVoltage", null, 27.5));
    of.by(
        "reach/condition",
        r -> r.says("capacity", MINIMUM, 2.5, "dischargeRate", 0.2, "cutoffVoltage", 25));
    of.by("reach/form", r -> r.butSays("height", null, 6.5));
    of.by("reach/specific-energy", r -> r.butSays("mass", null, 4.5));
    of.by("reach/specific-energy", r -> r.butSays("capacity", NOMINAL, 26));
    of.by("reach/energy-density", r -> r.butSays("capacity", NOMINAL, 26));
    of.by("chemistry/specific-energy", r -> lfp(r).butSays("capacity", NOMINAL, 3.4));
    of.by("chemistry/energy-density", r -> lfp(r).butSays("capacity", NOMINAL, 3.0));
    of.by("reach/density", r -> r.butSays("mass", null, 450));
    of.by("reach/density-of-form", r -> r.butSays("mass", null, 28));
  }

  private static Invented lfp(Invented record) {
    return record
        .is("chemistry", "LiFePO4")
        .butSays("nominalVoltage", NOMINAL, 3.2)
        .butSays("chargeVoltage", null, 3.65)
        .butSays("dischargeCutoffVoltage", null, 2.0);
  }

  private static void relations(Break of) {
    of.by("relation/energy", r -> r.says("energy", NOMINAL, 8.2));
    of.by("relation/specific-energy", r -> r.says("specificEnergy", null, 150));
    of.by("relation/energy-density", r -> r.says("energyDensity", null, 300));
    of.by(
        "relation/rate-and-current",
        r -> r.butSays("standardChargeCurrent", STANDARD, 1.3, "chargeRate", 0.2));
    of.by(
        "relation/rate-and-current",
        r -> r.says("cycleLife", null, 500, "dischargeRate", 1, "dischargeCurrent", 5.2));
    of.by("relation/model-and-capacity", r -> r.is("model", "TC-2200mAh"));
    of.by("relation/model-and-capacity", r -> r.is("model", "TC 18650 3,4Ah"));
  }

  private static void cells(Break of) {
    of.by("chemistry/nominal-voltage", r -> r.is("chemistry", "LiFePO4/graphite"));
    of.by("chemistry/charge-voltage", r -> lfp(r).butSays("chargeVoltage", null, 4.2));
    of.by("chemistry/charge-voltage", r -> r.is("chemistry", "NMC/LTO"));
    of.by("chemistry/cutoff-voltage", r -> lfp(r).butSays("dischargeCutoffVoltage", null, 1.5));
    of.by(
        "chemistry/voltages-together",
        r -> r.is("chemistry", "Li-ion").butSays("nominalVoltage", NOMINAL, 3.2));
    of.by("size/code", r -> r.is("sizeCode", "21700"));
    of.by("size/code", r -> r.butSays("height", null, 75));
    of.by("size/code", r -> r.is("sizeCode", "603449").says("thickness", null, 9));
    of.by("size/designation", r -> r.is("designation", "INR18/66"));
    of.by("size/designation", r -> r.is("designation", "IFR19/66"));
    of.by("size/designation", r -> r.is("designation", "INP9/35/66"));
    of.by("size/form", r -> r.says("thickness", null, 6));
    of.by("resistance/impossible-drop", r -> r.butSays("internalResistanceAC", MAXIMUM, 350));
    of.by("resistance/drop", r -> r.says("internalResistanceDC", MAXIMUM, 200));
    of.by("resistance/dc-below-ac", r -> r.says("internalResistanceDC", MAXIMUM, 25));
  }

  private static void slips(Break of) {
    of.by("slip/current-for-capacity", r -> r.butSays("standardChargeCurrent", STANDARD, 0.013));
    of.by("slip/current-for-capacity", r -> r.says("chargeCutoffCurrent", null, 1.2));
    of.by("slip/power-of-ten", r -> r.says("capacity", MINIMUM, 0.25));
    of.by("slip/power-of-ten", r -> r.says("chargeVoltage", MAXIMUM, 0.42));
    of.by("slip/power-of-ten", r -> r.says("mass", MAXIMUM, 4600));
    of.by("slip/swapped-digits", r -> r.says("mass", null, 54));
    of.by(
        "slip/printed-unit",
        r -> r.printed("Max. charge 2600 mAh", "maximumChargeCurrent", MAXIMUM, 2.6));
  }

  private static void trends(Break of) {
    of.by(
        "trend/rate",
        r ->
            r.says("capacity", MINIMUM, 2.4, "dischargeRate", 0.2)
                .says("capacity", MINIMUM, 2.5, "dischargeRate", 1));
    of.by(
        "trend/current",
        r ->
            r.says("capacity", MINIMUM, 2.4, "dischargeCurrent", 0.52)
                .says("capacity", MINIMUM, 2.5, "dischargeCurrent", 2.6));
    of.by(
        "trend/temperature",
        r ->
            r.says("capacityRetention", null, 90, "temperature", -10)
                .says("capacityRetention", null, 70, "temperature", 0));
    of.by(
        "trend/storage",
        r ->
            r.says("capacityRetention", null, 85, "duration", 2592000)
                .says("capacityRetention", null, 90, "duration", 7776000));
    of.by(
        "trend/cycles",
        r ->
            r.says("capacityRetention", null, 80, "cycles", 300)
                .says("capacityRetention", null, 85, "cycles", 500));
  }

  private static void curves(Break of) {
    of.by("curve/capacity-and-load", r -> r.discharge(0.2, 25, FAST).discharge(2, 25, SLOW));
    of.by(
        "curve/capacity-and-temperature",
        r -> r.discharge(0.5, 25, COLD).discharge(0.5, -10, FAST));
    of.by(
        "curve/crossing",
        r ->
            r.discharge(0.2, 25, SLOW)
                .discharge(2, 25, 0, 3.95, 0.5, 3.7, 1.3, 3.75, 2.1, 3.5, 2.45, 2.75));
    of.by("curve/voltage-rises", r -> r.discharge(0.2, 25, 0, 4.15, 1.3, 3.4, 1.8, 3.6, 2.6, 2.75));
    of.by("curve/ends-above-cutoff", r -> r.discharge(0.2, 25, 0, 4.15, 1.3, 3.65, 2.0, 3.3));
    of.by(
        "resistance/curves",
        r ->
            r.butSays("internalResistanceAC", MAXIMUM, 3.5)
                .discharge(0.2, 25, SLOW)
                .discharge(2, 25, FAST));
  }

  @TestFactory
  List<DynamicTest> findsWhatIsBroken() {
    List<DynamicTest> tests = new ArrayList<>();
    BROKEN.forEach(
        (rule, changes) ->
            changes.forEach(
                change ->
                    tests.add(
                        DynamicTest.dynamicTest(
                            rule, () -> finds(rule, change.apply(Invented.sound()).record())))));
    return tests;
  }

  private static void finds(String rule, CellRecord record) {
    List<Finding> findings = Checks.standard().examine(record);
    assertTrue(findings.stream().anyMatch(f -> f.rule().equals(rule)), findings::toString);
    for (Finding finding : findings) {
      assertTrue(finding.message().endsWith("."), finding::message);
    }
  }

  @Test
  void saysNothingOfASoundCell() {
    CellRecord record =
        Invented.sound()
            .is("designation", "INR19/66")
            .says("energy", NOMINAL, 9.36)
            .says("specificEnergy", null, 208)
            .says("internalResistanceDC", MAXIMUM, 60)
            .says("capacity", MINIMUM, 2.5)
            .discharge(0.2, 25, SLOW)
            .discharge(2, 25, FAST)
            .discharge(0.5, -10, COLD)
            .record();
    assertEquals(List.of(), Checks.standard().examine(record));
  }

  /** Rules of contradictions have tests of their own. */
  @Test
  void breaksARecordForEveryRule() {
    List<String> untested =
        Checks.standard().rules().stream()
            .map(CheckRule::id)
            .filter(id -> !id.startsWith("contradiction/") && !BROKEN.containsKey(id))
            .toList();
    assertEquals(List.of(), untested);
  }

  @Test
  void namesTheSlipWhereItIsAPowerOfTen() {
    Finding finding =
        Checks.standard().examine(Invented.sound().says("energy", NOMINAL, 93.6).record()).stream()
            .filter(f -> f.rule().equals("relation/energy"))
            .findFirst()
            .orElseThrow();
    assertEquals(
        "The nominal energy of 93.6 Wh (page 1) does not follow from the other figures: capacity"
            + " times nominal voltage is 9.36 Wh; one is about 10 times the other, so look for a"
            + " lost decimal sign or a prefix such as m.",
        finding.message());
  }
}
