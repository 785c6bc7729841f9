package commonsheet.check;

import static commonsheet.check.DifferingValues.differing;

import commonsheet.record.Severity;
import java.util.List;

/** The register of rules: a new rule is a line here. */
final class StandardRules {
  /** Voltages are set to the hundredth of a volt, so that much counts as another value. */
  private static final double VOLTAGE_TOLERANCE = 0.001;

  static final List<CheckRule> ALL =
      List.of(
          differing("contradiction/charge-voltage", "chargeVoltage")
              .beyond(VOLTAGE_TOLERANCE)
              .advice("charge to no more than the lower one until the maker has settled it"),
          differing("contradiction/discharge-cutoff-voltage", "dischargeCutoffVoltage")
              .beyond(VOLTAGE_TOLERANCE)
              .advice("discharge to no less than the higher one until the maker has settled it"),
          differing("contradiction/nominal-voltage", "nominalVoltage").beyond(VOLTAGE_TOLERANCE),
          differing("contradiction/capacity", "capacity").onlyAtTheSame(ConditionScope.DISCHARGE),
          differing(
              "contradiction/current",
              "standardChargeCurrent",
              "maximumChargeCurrent",
              "chargeCutoffCurrent",
              "standardDischargeCurrent",
              "maximumContinuousDischargeCurrent",
              "maximumPulseDischargeCurrent"),
          differing(
                  "contradiction/internal-resistance",
                  "internalResistanceAC",
                  "internalResistanceDC")
              .severity(Severity.NOTE)
              .advice("one may be that of a pack with its protection circuit"),
          differing("contradiction/mass", "mass"),
          differing(
              "contradiction/dimension", "diameter", "height", "width", "thickness", "length"),
          new MinimumAboveNominalCapacity(),
          new ValueOutsideItsRange());

  private StandardRules() {}
}
