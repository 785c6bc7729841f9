package commonsheet.check;

import static commonsheet.check.DifferingValues.differing;

import commonsheet.record.Severity;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The register of rules: a new rule is a line here. */
final class StandardRules {
  /** Voltages are set to the hundredth of a volt, so that much counts as another value. */
  private static final double VOLTAGE_TOLERANCE = 0.001;

  private static final List<CheckRule> CONTRADICTIONS =
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

  /** What no cell can have, whatever the sheet says. */
  private static final Interval SPECIFIC_ENERGY = new Interval(20, 320);

  private static final Interval ENERGY_DENSITY = new Interval(40, 850);

  /** Between those of water and of titanium: no cell is lighter or heavier. */
  private static final Interval DENSITY = new Interval(0.9, 4.5);

  private static final String ENERGY_SOURCE =
      "100 to 265 W.h/kg and 250 to 676 W.h/L, public overviews; margins by judgement";

  private static final List<CheckRule> REACH =
      List.of(
          new BeyondAnyCell(),
          new ImplausibleCondition(),
          new UnusualForForm(),
          new Reach(
              "reach/specific-energy",
              Severity.ERROR,
              ENERGY_SOURCE,
              "an energy per mass",
              "W.h/kg",
              (record, facts) -> facts.specificEnergy(),
              (record, facts) -> Optional.of(SPECIFIC_ENERGY),
              "look at the units and decimal signs of capacity, voltage and mass"),
          new Reach(
              "reach/energy-density",
              Severity.ERROR,
              ENERGY_SOURCE,
              "an energy per volume",
              "W.h/L",
              (record, facts) -> facts.energyDensity(),
              (record, facts) -> Optional.of(ENERGY_DENSITY),
              "look at the units and decimal signs of capacity, voltage and dimensions"),
          new Reach(
              "chemistry/specific-energy",
              Severity.WARNING,
              Chemistry.SOURCE,
              "an energy per mass",
              "W.h/kg",
              (record, facts) -> facts.specificEnergy(),
              (record, facts) -> Chemistry.of(record).map(c -> new Interval(0, c.specificEnergy())),
              "look at the capacity, the mass and the chemistry"),
          new Reach(
              "chemistry/energy-density",
              Severity.WARNING,
              Chemistry.SOURCE,
              "an energy per volume",
              "W.h/L",
              (record, facts) -> facts.energyDensity(),
              (record, facts) -> Chemistry.of(record).map(c -> new Interval(0, c.energyDensity())),
              "look at the capacity, the dimensions and the chemistry"),
          new Reach(
              "reach/density",
              Severity.ERROR,
              Forms.DENSITY_SOURCE,
              "a density",
              "g/cm³",
              (record, facts) -> facts.density(),
              (record, facts) -> Optional.of(DENSITY),
              "look at the units of the mass and the dimensions"),
          new Reach(
              "reach/density-of-form",
              Severity.WARNING,
              Forms.DENSITY_SOURCE,
              "a density",
              "g/cm³",
              (record, facts) -> facts.density(),
              (record, facts) -> Forms.density(record),
              "look at the mass and the dimensions"));

  private static final List<CheckRule> RELATIONS =
      List.of(
          new ComputedAgainstPrinted(
              "relation/energy",
              "energy",
              0.03,
              "capacity times nominal voltage",
              CheckRule.COMMON_PRACTICE,
              CellFacts::energy),
          new ComputedAgainstPrinted(
              "relation/specific-energy",
              "specificEnergy",
              0.05,
              "capacity times nominal voltage over mass",
              CheckRule.COMMON_PRACTICE,
              CellFacts::specificEnergy),
          new ComputedAgainstPrinted(
              "relation/energy-density",
              "energyDensity",
              0.08,
              "capacity times nominal voltage over volume",
              CheckRule.COMMON_PRACTICE,
              CellFacts::energyDensity),
          new RateAgainstCurrent(),
          new ModelCapacity(),
          new ChargeTemperatureBeyondDischarge(),
          new StatisticsOutOfOrder());

  private static final List<CheckRule> CELL =
      List.of(
          new ChemistryVoltage(
              "chemistry/nominal-voltage", Severity.WARNING, "nominalVoltage", Chemistry::nominal),
          new ChemistryVoltage(
              "chemistry/charge-voltage", Severity.ERROR, "chargeVoltage", Chemistry::charge),
          new ChemistryVoltage(
              "chemistry/cutoff-voltage",
              Severity.WARNING,
              "dischargeCutoffVoltage",
              Chemistry::cutoff),
          new VoltagesOfNoChemistry(),
          new SizeCode(),
          new DesignationAgainstCell(),
          new FormAgainstDimensions(),
          DropUnderCurrent.impossible(),
          DropUnderCurrent.implausible(),
          new DcBelowAc());

  private static final List<CheckRule> SLIPS =
      List.of(new CurrentForCapacity(), new PowerOfTen(), new SwappedDigits(), new PrintedUnit());

  private static final List<CheckRule> TRENDS =
      List.of(
          Trend.byRate(),
          Trend.byCurrent(),
          Trend.byTemperature(),
          Trend.byStorage(),
          Trend.byCycles(),
          CurveCapacity.byLoad(),
          CurveCapacity.byTemperature(),
          new CurvesCross(),
          new VoltageRises(),
          new EndAboveCutoff(),
          new CurveResistance());

  /** Every rule for a record, in the order of its findings. */
  static final List<CheckRule> ALL =
      Stream.of(CONTRADICTIONS, Order.all(), RELATIONS, REACH, CELL, SLIPS, TRENDS)
          .flatMap(List::stream)
          .toList();

  /** Every rule between records. */
  static final List<RecordsRule> BETWEEN = List.of(new SameCellDiffers(), new SameSheetTwice());

  private StandardRules() {}
}
