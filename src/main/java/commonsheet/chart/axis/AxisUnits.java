package commonsheet.chart.axis;

import commonsheet.chart.text.AxisMeasure;
import commonsheet.chart.text.ChartWords;
import commonsheet.chart.text.Measure;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.TradeUnit;
import commonsheet.quantity.Units;
import java.util.ArrayList;
import java.util.List;

/**
 * The unit of an axis for one measure: as printed, or, where none is, the one its numbers speak
 * for, which is a doubt.
 */
public final class AxisUnits {
  /** Numbers of an axis above this are milliamperes or milliampere-hours, not whole ones. */
  private static final double MILLI = 60;

  private AxisUnits() {}

  /**
   * The scale of an axis in canonical units.
   *
   * @param unit UCUM code of what the scale now gives
   * @param printed UCUM code of the printed or inferred unit
   * @param doubts one sentence where the unit was inferred
   */
  public record Canonical(Scale scale, String unit, String printed, List<String> doubts) {}

  public static Canonical of(ReadAxis axis, AxisMeasure shown) {
    Measure measure = shown.measure();
    List<String> doubts = new ArrayList<>();
    TradeUnit unit = shown.unit();
    if (unit == null) {
      unit = inferred(axis, measure);
      boolean certain =
          List.of("cycles", "temperature").contains(measure.quantity())
              || (measure.quantity().equals("voltage") && areVolts(axis));
      if (!certain) {
        doubts.add(
            "The "
                + axis.side().printed()
                + " shows "
                + words(measure)
                + " without a unit; "
                + unit.ucum()
                + " is taken from the size of its numbers.");
      }
    }
    String target = unit.dimension() == Dimension.RATIO ? "%" : measure.unit();
    if (unit.dimension() == Dimension.OTHER
        || !ChartWords.standard().fits(measure, unit.dimension())) {
      target = unit.ucum();
    }
    String from = unit.ucum();
    String to = target;
    Scale scale = axis.scale();
    if (!from.equals(to)) {
      scale = scale.converted(value -> Units.convert(value, from, to));
    }
    return new Canonical(scale, to, from, doubts);
  }

  /** Whether the numbers of an axis can only be the volts of a cell. */
  public static boolean areVolts(ReadAxis axis) {
    double least = Double.MAX_VALUE;
    double most = -Double.MAX_VALUE;
    for (ScaleFit.Mark mark : axis.fit().in()) {
      least = Math.min(least, mark.value());
      most = Math.max(most, mark.value());
    }
    return least >= 1 && most > 2.5 && most <= 5.5;
  }

  private static String words(Measure measure) {
    return measure.quantity().replaceAll("([A-Z])", " $1").toLowerCase(java.util.Locale.ROOT);
  }

  private static TradeUnit inferred(ReadAxis axis, Measure measure) {
    double most = 0;
    for (ScaleFit.Mark mark : axis.fit().in()) {
      most = Math.max(most, Math.abs(mark.value()));
    }
    boolean share =
        axis.title() != null
            && axis.title()
                .toLowerCase(java.util.Locale.ROOT)
                .matches(".*(retention|relative|ratio|rate|保持|维持|維持|比).*");
    return switch (measure.quantity()) {
      case "capacity" ->
          share && most > 1.5 && most <= 200
              ? new TradeUnit("%", Dimension.RATIO)
              : new TradeUnit(most > MILLI ? "mA.h" : "A.h", Dimension.CHARGE);
      case "current" -> new TradeUnit(most > MILLI ? "mA" : "A", Dimension.CURRENT);
      case "voltage" -> new TradeUnit(most > 100 ? "mV" : "V", Dimension.VOLTAGE);
      case "time" -> new TradeUnit(most <= 12 ? "h" : most <= 600 ? "min" : "s", Dimension.TIME);
      case "resistance" -> new TradeUnit(most < 1 ? "Ohm" : "mOhm", Dimension.RESISTANCE);
      case "energy" -> new TradeUnit("W.h", Dimension.ENERGY);
      case "temperature" -> new TradeUnit("Cel", Dimension.TEMPERATURE);
      case "cycles" -> new TradeUnit("1", Dimension.CYCLES);
      case "power" -> new TradeUnit("W", Dimension.POWER);
      default -> new TradeUnit("%", Dimension.RATIO);
    };
  }
}
