package commonsheet.chart;

import commonsheet.record.Curve;
import commonsheet.record.Method;
import java.util.ArrayList;
import java.util.List;

/**
 * The discharge curves of one chart begin at the same charge and end at the same voltage, the
 * cut-off. A line followed through pixels can be lost on its way, so one that does not is doubted;
 * paths are whole as they are. Common practice, no source.
 */
final class WholeCurves {
  /** Share of what the family spans by which a curve may begin late or end early. */
  private static final double SLACK = 0.05;

  private WholeCurves() {}

  /** The curves, those that begin late or end early doubted; other kinds as they are. */
  static List<Curve> checked(List<Curve> curves) {
    List<Curve> family = curves.stream().filter(WholeCurves::isFollowed).toList();
    if (family.size() < 2) {
      return curves;
    }
    double begin = family.stream().mapToDouble(WholeCurves::begin).min().orElseThrow();
    double end = family.stream().mapToDouble(WholeCurves::end).min().orElseThrow();
    double across = family.stream().mapToDouble(WholeCurves::furthest).max().orElseThrow() - begin;
    double down = family.stream().mapToDouble(WholeCurves::highest).max().orElseThrow() - end;
    List<Curve> checked = new ArrayList<>();
    for (Curve curve : curves) {
      Curve now = curve;
      if (family.contains(curve)) {
        if (begin(curve) > begin + SLACK * across + curve.uncertainty().x()) {
          now =
              now.doubted(
                  "The curve begins later than others of its chart; a piece may be missing.");
        }
        if (end(curve) > end + SLACK * down + curve.uncertainty().y()) {
          now = now.doubted("The curve ends above others of its chart; a piece may be missing.");
        }
      }
      checked.add(now);
    }
    return checked;
  }

  private static boolean isFollowed(Curve curve) {
    return curve.method() == Method.COLOUR_TRACE
        && curve.kind().equals("discharge")
        && curve.y().quantity().equals("voltage");
  }

  private static double begin(Curve curve) {
    return curve.points().stream().mapToDouble(p -> p.get(0)).min().orElse(0);
  }

  private static double furthest(Curve curve) {
    return curve.points().stream().mapToDouble(p -> p.get(0)).max().orElse(0);
  }

  private static double highest(Curve curve) {
    return curve.points().stream().mapToDouble(p -> p.get(1)).max().orElse(0);
  }

  private static double end(Curve curve) {
    return curve.points().stream().mapToDouble(p -> p.get(1)).min().orElse(0);
  }
}
