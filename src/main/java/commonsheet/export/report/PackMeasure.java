package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.compare.PackFigures;
import java.util.function.Function;

/** What is said of all packs of a machine together, with name, UCUM unit and title. */
enum PackMeasure {
  NOMINAL_CAPACITY("packNominalCapacity", "A.h", "Nominal capacity", PackFigures::nominalCapacity),
  NOMINAL_ENERGY("packNominalEnergy", "W.h", "Nominal energy", PackFigures::nominalEnergy),
  DELIVERED_CAPACITY(
      "packDeliveredCapacity", "A.h", "Delivered capacity", PackFigures::deliveredCapacity),
  DELIVERED_ENERGY("packDeliveredEnergy", "W.h", "Delivered energy", PackFigures::deliveredEnergy),
  CELL_MASS("packCellMass", "kg", "Mass of bare cells", PackFigures::cellMass),
  MASS("packMass", "kg", "Mass with wiring and casing", PackFigures::mass),
  LOW_VOLTAGE("packLowVoltage", "V", "Voltage, empty", PackFigures::lowVoltage),
  HIGH_VOLTAGE("packHighVoltage", "V", "Voltage, full", PackFigures::highVoltage),
  SHARE_AT_AVERAGE(
      "packShareOfRatingAtAverage",
      "1",
      "Share of the rating at the average current",
      PackFigures::shareOfRatingAtAverage),
  SHARE_AT_PEAK(
      "packShareOfRatingAtPeak",
      "1",
      "Share of the rating at the peak current",
      PackFigures::shareOfRatingAtPeak),
  TIME("packTime", "h", "Time at the average current", PackFigures::time),
  DISTANCE("packDistance", "km", "Distance at the cruise speed", PackFigures::distance);

  private static final double PERCENT = 100;

  private final String label;
  private final String unit;
  private final String title;
  private final Function<PackFigures, Figure> figure;

  PackMeasure(String label, String unit, String title, Function<PackFigures, Figure> figure) {
    this.label = label;
    this.unit = unit;
    this.title = title;
    this.figure = figure;
  }

  String label() {
    return label;
  }

  String unit() {
    return unit;
  }

  /** The unit that people read it in: a share in percent. */
  String shownUnit() {
    return isShare() ? "%" : Unit.shown(unit);
  }

  /** The figure in the unit that people read it in. */
  Figure shown(PackFigures pack) {
    Figure figure = of(pack);
    return isShare() ? percent(figure) : figure;
  }

  boolean isShare() {
    return unit.equals("1");
  }

  private static Figure percent(Figure share) {
    return new Figure(
        percent(share.value()),
        percent(share.low()),
        percent(share.high()),
        share.origin(),
        share.from(),
        share.notes(),
        share.unsure());
  }

  private static Double percent(Double share) {
    return share == null ? null : Double.valueOf(PERCENT * share);
  }

  String title() {
    return title;
  }

  Figure of(PackFigures pack) {
    Figure known = figure.apply(pack);
    return known == null ? Figure.absent("not asked for") : known;
  }
}
