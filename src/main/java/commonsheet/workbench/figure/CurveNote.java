package commonsheet.workbench.figure;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.Curve;
import commonsheet.record.Method;
import java.util.ArrayList;
import java.util.List;

/** What a person did with a curve, for the note of its evidence. */
final class CurveNote {
  private static final int DIGITS = 6;

  private CurveNote() {}

  /** Of a curve that a person added. */
  static String added(GivenCurve given) {
    return "added by a person: " + String.join("; ", points(given));
  }

  /** Of a curve that a person changed, after what was noted before. */
  static String changed(Curve before, GivenCurve given, Curve.Axis x, Curve.Axis y) {
    List<String> parts = new ArrayList<>();
    if (before.evidence().note() != null) {
      parts.add(before.evidence().note());
    }
    if (!given.kind().equals(before.kind())) {
      parts.add("kind was " + before.kind());
    }
    addAxis("x", before.x(), x, parts);
    addAxis("y", before.y(), y, parts);
    if (given.places() != null) {
      parts.addAll(points(given));
    }
    return parts.isEmpty() ? null : String.join("; ", parts);
  }

  private static List<String> points(GivenCurve given) {
    List<String> parts = new ArrayList<>();
    int all = given.places().size();
    if (given.traced() != null) {
      boolean paths = given.traced().method() == Method.VECTOR_CURVE;
      parts.add("traced from a click on its ink, in the page's " + (paths ? "paths" : "pixels"));
    }
    if (given.placed() > 0) {
      parts.add(
          given.placed() >= all
              ? "all " + all + " points placed by hand"
              : given.placed() + " of " + all + " points placed by hand");
    }
    if (given.removed() > 0) {
      parts.add(given.removed() + (given.removed() == 1 ? " point" : " points") + " taken out");
    }
    return parts;
  }

  private static void addAxis(
      String name, Curve.Axis before, Curve.Axis after, List<String> parts) {
    if (after.equals(before)) {
      return;
    }
    long placed = Ticks.placed(after, before);
    String marks =
        after.ticks().size()
            + " reference marks"
            + (placed > 0 ? ", " + placed + " of them placed by hand" : "");
    parts.add(
        name
            + " axis by "
            + marks
            + (Curve.Axis.LOGARITHMIC.equals(after.scale()) ? ", logarithmic" : "")
            + "; it was read as "
            + before.quantity()
            + " in "
            + before.unit()
            + marks(before));
  }

  private static String marks(Curve.Axis axis) {
    List<String> marks = new ArrayList<>();
    for (Curve.Tick tick : axis.ticks()) {
      marks.add(
          PlainNumber.of(tick.value(), DIGITS)
              + " at "
              + PlainNumber.of(tick.at(), DIGITS)
              + " pt");
    }
    return marks.isEmpty() ? "" : " by " + String.join(", ", marks);
  }
}
