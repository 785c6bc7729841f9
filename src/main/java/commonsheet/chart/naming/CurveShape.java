package commonsheet.chart.naming;

import commonsheet.chart.plot.Trace;
import commonsheet.chart.text.Measure;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;

/** What the shape of a curve over time says of what it shows. */
public final class CurveShape {
  private CurveShape() {}

  /**
   * Whether a curve can be this quantity in the course of a charge: capacity rises from the floor,
   * current ends low, voltage rises and does not begin at the floor.
   */
  public static boolean fits(Trace trace, Measure measure, Box frame) {
    Point first = CurveGeometry.first(trace);
    Point last = CurveGeometry.last(trace);
    double fromFloor = (frame.bottom() - settledStart(trace, frame)) / frame.height();
    double rise = (first.y() - last.y()) / frame.height();
    return switch (measure.quantity()) {
      case "capacity" -> rise > 0.1 && fromFloor < 0.12;
      case "current" -> (frame.bottom() - last.y()) / frame.height() < 0.5 && !(rise > 0.1);
      case "voltage" -> rise > -0.05 && fromFloor > 0.05;
      default -> true;
    };
  }

  /** Height on the page just after the start, where an upright start from the floor is over. */
  private static double settledStart(Trace trace, Box frame) {
    double x = CurveGeometry.first(trace).x() + 0.01 * frame.width();
    double height = CurveGeometry.heightAt(trace, x);
    return Double.isNaN(height) ? CurveGeometry.first(trace).y() : height;
  }
}
