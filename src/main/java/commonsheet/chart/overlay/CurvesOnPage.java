package commonsheet.chart.overlay;

import commonsheet.chart.reference.PlotReference;
import commonsheet.quantity.PlainNumber;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Standing;
import commonsheet.sheet.Box;
import commonsheet.sheet.CurveMark;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What to draw over a chart so that a person sees whether its curves sit on the ink. Everything
 * comes from the record alone, so what is drawn is what was kept.
 */
public final class CurvesOnPage {
  private static final String DISCHARGE = "discharge";

  private CurvesOnPage() {}

  /** A curve at its places on the page; without places where its axes have no ticks there. */
  public static CurveMark mark(Curve curve) {
    return new CurveMark(
        PlotReference.places(curve), curve.id(), name(curve), curve.standing() == Standing.UNSURE);
  }

  /**
   * Where the ticks of the curves lie: those of x axes below the plot, those of y axes on its left,
   * and on its right those of a second y axis, which on charts of charging is not the voltage's.
   */
  public static List<Point> ticks(List<Curve> curves, Box plot) {
    boolean two = curves.stream().map(c -> c.y().ticks()).distinct().count() > 1;
    List<Point> ticks = new ArrayList<>();
    for (Curve curve : curves) {
      boolean right = two && !curve.y().quantity().equals("voltage");
      double beside = right ? plot.right() : plot.x();
      curve.x().ticks().forEach(tick -> ticks.add(new Point(tick.at(), plot.bottom())));
      curve.y().ticks().forEach(tick -> ticks.add(new Point(beside, tick.at())));
    }
    return ticks.stream().distinct().toList();
  }

  /** The label as printed and the conditions read from it. */
  private static String name(Curve curve) {
    List<String> parts = new ArrayList<>();
    if (curve.label() != null) {
      parts.add(curve.label());
    }
    if (!curve.kind().equals(DISCHARGE)) {
      parts.add(curve.y().quantity());
    }
    for (Map.Entry<String, Double> condition : curve.conditions().values().entrySet()) {
      String unit = unit(condition.getKey());
      boolean ofCharge = condition.getKey().startsWith("charge");
      if (unit != null && !(ofCharge && curve.kind().equals(DISCHARGE))) {
        parts.add(PlainNumber.of(condition.getValue(), 4) + unit);
      }
    }
    return String.join(", ", parts);
  }

  /** Null for a condition that tells no curves of one chart apart. */
  private static String unit(String condition) {
    return switch (condition) {
      case Conditions.DISCHARGE_RATE, Conditions.CHARGE_RATE -> " C";
      case Conditions.DISCHARGE_CURRENT, Conditions.CHARGE_CURRENT -> " A";
      case Conditions.TEMPERATURE -> " °C";
      default -> null;
    };
  }
}
