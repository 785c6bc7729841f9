package commonsheet.chart.reference;

import commonsheet.record.Curve;
import commonsheet.sheet.Point;
import java.util.List;
import java.util.Optional;

/** Both axes of a curve: from places on the page to its values and back. */
public record PlotReference(AxisReference x, AxisReference y) {
  /**
   * By the axes of a record.
   *
   * @throws ReferenceException where the ticks of one make no scale, or both run the same way
   */
  public static PlotReference of(Curve.Axis x, Curve.Axis y) throws ReferenceException {
    PlotReference reference =
        new PlotReference(
            AxisReference.of(x, Direction.ACROSS), AxisReference.of(y, Direction.DOWN));
    if (reference.determinant() == 0) {
      throw new ReferenceException(
          "both axes rise in the same direction of the page; check the values of the marks");
    }
    return reference;
  }

  /** That of a curve; nothing for one that stands on no chart. */
  public static Optional<PlotReference> of(Curve curve) {
    try {
      return Optional.of(of(curve.x(), curve.y()));
    } catch (ReferenceException none) {
      return Optional.empty();
    }
  }

  /** Where the points of a curve lie on its page; none for one that stands on no chart. */
  public static List<Point> places(Curve curve) {
    return of(curve)
        .map(
            reference ->
                curve.points().stream().map(p -> reference.place(p.get(0), p.get(1))).toList())
        .orElse(List.of());
  }

  /** The values at a place, x and y. */
  public List<Double> values(Point place) {
    return List.of(x.value(place), y.value(place));
  }

  /** The place of values; beyond all paper for what a logarithmic axis does not have. */
  public Point place(double valueX, double valueY) {
    double sx = x.scaled(valueX) - x.plane().offset();
    double sy = y.scaled(valueY) - y.plane().offset();
    double determinant = determinant();
    return new Point(
        (sx * y.plane().down() - sy * x.plane().down()) / determinant,
        (sy * x.plane().across() - sx * y.plane().across()) / determinant);
  }

  private double determinant() {
    return x.plane().across() * y.plane().down() - x.plane().down() * y.plane().across();
  }
}
