package commonsheet.chart.reference;

import commonsheet.record.Curve;
import commonsheet.sheet.Point;
import java.util.List;

/** The marks of one axis, and the plane through them. */
final class Marks {
  /** Below this share of their extent marks lie on one line. */
  private static final double FLAT = 1e-6;

  private final List<Point> places;
  private final double[] values;
  private final boolean skewed;
  private final Direction direction;
  private final Point mean;
  private final double meanValue;

  Marks(List<Curve.Tick> ticks, Direction direction, boolean logarithmic) {
    this.places = ticks.stream().map(direction::place).toList();
    this.values =
        ticks.stream().mapToDouble(t -> logarithmic ? Math.log10(t.value()) : t.value()).toArray();
    this.skewed = areSkewed(ticks);
    this.direction = direction;
    this.mean =
        new Point(
            places.stream().mapToDouble(Point::x).average().orElse(0),
            places.stream().mapToDouble(Point::y).average().orElse(0));
    this.meanValue = java.util.Arrays.stream(values).average().orElse(0);
  }

  static boolean areSkewed(List<Curve.Tick> ticks) {
    return !ticks.isEmpty() && ticks.stream().allMatch(tick -> tick.across() != null);
  }

  static boolean areThree(List<Curve.Tick> ticks) {
    return ticks.stream().map(Curve.Tick::value).distinct().count() > 2;
  }

  static void check(List<Curve.Tick> ticks, Direction direction, boolean logarithmic, String axis)
      throws ReferenceException {
    boolean skewed = areSkewed(ticks);
    if (ticks.size() < 2) {
      throw new ReferenceException(
          axis
              + (ticks.isEmpty() ? " has no reference mark" : " has one reference mark only")
              + "; give the places of two of its ticks with their values");
    }
    if (ticks.stream().anyMatch(t -> !Double.isFinite(t.at()) || !Double.isFinite(t.value()))) {
      throw new ReferenceException(axis + " has a reference mark without a place or a value");
    }
    if (!skewed && ticks.stream().anyMatch(tick -> tick.across() != null)) {
      throw new ReferenceException(
          axis + " has marks of an upright and of a turned chart; give all of one kind");
    }
    double first = ticks.get(0).at();
    if ((!skewed && ticks.stream().allMatch(tick -> tick.at() == first))
        || ticks.stream().map(Curve.Tick::value).distinct().count() < 2) {
      throw new ReferenceException(
          axis
              + " has reference marks of one place or one value only; give two ticks that differ in"
              + " both");
    }
    if (logarithmic && ticks.stream().anyMatch(tick -> tick.value() <= 0)) {
      throw new ReferenceException(
          axis + " is logarithmic and has a reference mark that is not above 0");
    }
    if (skewed && new Marks(ticks, direction, false).areOnOneLine()) {
      throw new ReferenceException(
          "the reference marks lie on one line; a turned chart takes three, one of them off it");
    }
  }

  private boolean areOnOneLine() {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (Point p : places) {
      xx += (p.x() - mean.x()) * (p.x() - mean.x());
      xy += (p.x() - mean.x()) * (p.y() - mean.y());
      yy += (p.y() - mean.y()) * (p.y() - mean.y());
    }
    return xx * yy - xy * xy <= FLAT * xx * yy;
  }

  Plane plane() {
    return skewed ? turned() : upright();
  }

  /** Places on values, since the values are exact and the places are not. */
  private Plane upright() {
    double squares = 0;
    double products = 0;
    for (int i = 0; i < values.length; i++) {
      double value = values[i] - meanValue;
      squares += value * value;
      products += value * (along(i) - along());
    }
    double slope = squares / products;
    double offset = meanValue - slope * along();
    return direction == Direction.ACROSS
        ? new Plane(offset, slope, 0)
        : new Plane(offset, 0, slope);
  }

  private double along(int i) {
    return direction == Direction.ACROSS ? places.get(i).x() : places.get(i).y();
  }

  private double along() {
    return direction == Direction.ACROSS ? mean.x() : mean.y();
  }

  private Plane turned() {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double xv = 0;
    double yv = 0;
    for (int i = 0; i < values.length; i++) {
      double x = places.get(i).x() - mean.x();
      double y = places.get(i).y() - mean.y();
      xx += x * x;
      xy += x * y;
      yy += y * y;
      xv += x * (values[i] - meanValue);
      yv += y * (values[i] - meanValue);
    }
    double determinant = xx * yy - xy * xy;
    double across = (xv * yy - yv * xy) / determinant;
    double down = (yv * xx - xv * xy) / determinant;
    return new Plane(meanValue - across * mean.x() - down * mean.y(), across, down);
  }

  /**
   * Twice the standard error of the scale at its outer marks, in points, which covers about 95 %
   * where the marks scatter by chance.
   */
  double error(Plane plane) {
    int free = values.length - (skewed ? 3 : 2);
    if (free < 1) {
      return 0;
    }
    double sum = 0;
    double spread = 0;
    double reach = 0;
    for (int i = 0; i < values.length; i++) {
      sum += Math.pow((values[i] - plane.at(places.get(i))) / plane.steepness(), 2);
      double distance = skewed ? places.get(i).distance(mean) : Math.abs(along(i) - along());
      spread += distance * distance;
      reach = Math.max(reach, distance);
    }
    return 2
        * Math.sqrt(sum / free)
        * Math.sqrt(1.0 / values.length + reach * reach / Math.max(1e-12, spread));
  }
}
