package commonsheet.chart.reference;

import commonsheet.chart.plot.Rounding;
import commonsheet.chart.plot.Thinning;
import commonsheet.record.Curve;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A curve by its places on the page.
 *
 * @param points in points from the top left of the page
 * @param errorX how far a place, the scale included, can be off across the page, in points
 * @param errorY the same down the page
 */
public record PlacedLine(List<Point> points, double errorX, double errorY) {
  /** Points left out lie off by no more than this share of the uncertainty. */
  private static final double THINNING = 0.1;

  /** Fewer points are all kept. */
  private static final int MANY = 3;

  public PlacedLine {
    points = List.copyOf(points);
  }

  /** A curve's values with how far they may be off, in the units of its axes. */
  public record Values(List<List<Double>> points, Curve.Uncertainty uncertainty) {}

  /** A curve of a record at its places; nothing for one that stands on no chart. */
  public static Optional<PlacedLine> of(Curve curve) {
    return PlotReference.of(curve).map(reference -> of(curve, reference));
  }

  private static PlacedLine of(Curve curve, PlotReference reference) {
    List<Point> places = PlotReference.places(curve);
    return new PlacedLine(
        places,
        curve.uncertainty().x() / steepest(places, reference.x()),
        curve.uncertainty().y() / steepest(places, reference.y()));
  }

  /**
   * The same places under other scales: what the old scales added to the error goes, what the new
   * ones add comes.
   *
   * @param byHandX whether a person placed a mark of the x axis
   * @param byHandY whether a person placed a mark of the y axis
   */
  public PlacedLine rescaled(
      PlotReference before, PlotReference after, boolean byHandX, boolean byHandY) {
    return new PlacedLine(
        points,
        rescaled(errorX, before.x(), after.x(), byHandX),
        rescaled(errorY, before.y(), after.y(), byHandY));
  }

  private static double rescaled(
      double error, AxisReference before, AxisReference after, boolean byHand) {
    double rest = Math.sqrt(Math.max(0, error * error - before.error() * before.error()));
    return Math.hypot(Math.max(rest, byHand ? AxisReference.PLACING : 0), after.error());
  }

  /** Other points in its place, each no better placed than the larger error. */
  public PlacedLine with(List<Point> others, double leastX, double leastY) {
    return new PlacedLine(others, Math.max(errorX, leastX), Math.max(errorY, leastY));
  }

  /** The same line without the points that lie on the way between the others. */
  public PlacedLine thinned() {
    if (points.size() < MANY || errorX <= 0 || errorY <= 0) {
      return this;
    }
    List<double[]> all = new ArrayList<>();
    points.forEach(p -> all.add(new double[] {p.x(), p.y()}));
    Thinning.Thinned thinned = Thinning.of(all, errorX, errorY, THINNING);
    double more = 1 + thinned.off();
    List<Point> left = thinned.points().stream().map(p -> new Point(p[0], p[1])).toList();
    return new PlacedLine(left, errorX * more, errorY * more);
  }

  /** Its values, each to a small part of its own error, which on logarithmic axes differs. */
  public Values values(PlotReference reference) {
    List<List<Double>> values = new ArrayList<>();
    for (Point place : points) {
      values.add(
          List.of(rounded(reference.x(), place, errorX), rounded(reference.y(), place, errorY)));
    }
    return new Values(
        values,
        new Curve.Uncertainty(
            Rounding.twoDigits(errorX * steepest(points, reference.x())),
            Rounding.twoDigits(errorY * steepest(points, reference.y()))));
  }

  private static double rounded(AxisReference axis, Point place, double error) {
    return Rounding.within(axis.value(place), error * axis.perPoint(place));
  }

  private static double steepest(List<Point> places, AxisReference axis) {
    return places.stream().mapToDouble(axis::perPoint).max().orElse(1);
  }
}
