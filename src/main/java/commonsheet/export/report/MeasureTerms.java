package commonsheet.export.report;

import commonsheet.compare.Measure;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.quantity.QuantityKind;

/** The terms of EMMO and QUDT that mean exactly what a measure means. */
final class MeasureTerms {
  private static final String QUDT_POWER = "http://qudt.org/vocab/quantitykind/Power";

  private MeasureTerms() {}

  /**
   * IRI of the EMMO term, or null where there is none as narrow or as wide: a delivered energy is
   * no nominal one, and curves apart at equal charge are no DC resistance by IEC 61960-3.
   */
  static String emmo(Measure measure) {
    return switch (measure) {
      case CURRENT_RATING, PULSE_RATING, NOMINAL_VOLTAGE, MASS, DELIVERED_CAPACITY ->
          kind(measure).emmo();
      default -> null;
    };
  }

  /** IRI of the QUDT quantity kind. */
  static String qudt(Measure measure) {
    return measure == Measure.HEAT ? QUDT_POWER : kind(measure).qudt();
  }

  /** The quantity of records that is nearest. */
  private static QuantityKind kind(Measure measure) {
    return QuantityCatalogue.standard()
        .get(
            switch (measure) {
              case CURRENT_RATING -> "maximumContinuousDischargeCurrent";
              case PULSE_RATING -> "maximumPulseDischargeCurrent";
              case NOMINAL_CAPACITY, DELIVERED_CAPACITY -> "capacity";
              case NOMINAL_VOLTAGE, MEAN_VOLTAGE, LOWEST_VOLTAGE, VOLTAGE_DROP -> "nominalVoltage";
              case MASS -> "mass";
              case DELIVERED_ENERGY, HEAT -> "energy";
              case DELIVERED_SPECIFIC_ENERGY -> "specificEnergy";
              case CURVE_RESISTANCE -> "internalResistanceDC";
            });
  }
}
