package commonsheet.chart.reference;

import commonsheet.record.Curve;
import commonsheet.sheet.Point;
import java.util.List;

/**
 * The scale of one axis through marks of known place and value, by least squares. Two marks make a
 * straight or logarithmic one; three that are known in both directions make one for a chart that is
 * turned or skewed.
 */
public final class AxisReference {
  /** How well a person hits a place, in points: a sixth of a millimetre. Common practice. */
  public static final double PLACING = 0.5;

  private final Direction direction;
  private final boolean logarithmic;
  private final Plane plane;
  private final double scatter;
  private final double largest;

  private AxisReference(
      Direction direction,
      boolean logarithmic,
      Plane plane,
      double scatter,
      List<Curve.Tick> ticks) {
    this.direction = direction;
    this.logarithmic = logarithmic;
    this.plane = plane;
    this.scatter = scatter;
    double most = 0;
    for (Curve.Tick tick : ticks) {
      most = Math.max(most, Math.abs(scaled(tick) - plane.at(direction.place(tick))));
    }
    this.largest = most;
  }

  /**
   * The scale of an axis of a record. Where nobody said whether it is logarithmic, the better of
   * both is taken for three ticks and more.
   *
   * @throws ReferenceException where its ticks make no scale
   */
  public static AxisReference of(Curve.Axis axis, Direction direction) throws ReferenceException {
    if (axis.scale() != null) {
      return of(axis.ticks(), direction, axis.scale().equals(Curve.Axis.LOGARITHMIC));
    }
    AxisReference straight = of(axis.ticks(), direction, false);
    boolean open =
        Marks.areThree(axis.ticks()) && axis.ticks().stream().allMatch(tick -> tick.value() > 0);
    if (!open || Marks.areSkewed(axis.ticks())) {
      return straight;
    }
    AxisReference bent = of(axis.ticks(), direction, true);
    return bent.scatter < straight.scatter ? bent : straight;
  }

  /**
   * A scale of a kind that is known.
   *
   * @throws ReferenceException where the marks make none
   */
  public static AxisReference of(List<Curve.Tick> ticks, Direction direction, boolean logarithmic)
      throws ReferenceException {
    return of(ticks, direction, logarithmic, "the " + direction.letter() + " axis");
  }

  /**
   * A scale of a kind that is known.
   *
   * @param name what the axis is called where something is wrong with its marks
   * @throws ReferenceException where the marks make none
   */
  public static AxisReference of(
      List<Curve.Tick> ticks, Direction direction, boolean logarithmic, String name)
      throws ReferenceException {
    Marks.check(ticks, direction, logarithmic, name);
    Marks marks = new Marks(ticks, direction, logarithmic);
    Plane plane = marks.plane();
    if (!(plane.steepness() > 0) || Double.isInfinite(plane.steepness())) {
      throw new ReferenceException(
          name + " has reference marks that contradict each other; check their values");
    }
    return new AxisReference(direction, logarithmic, plane, marks.error(plane), ticks);
  }

  /** Whether equal steps multiply. */
  public boolean isLogarithmic() {
    return logarithmic;
  }

  /** The value at a place of the page, in the unit of the axis. */
  public double value(Point place) {
    double scaled = plane.at(place);
    return logarithmic ? Math.pow(10, scaled) : scaled;
  }

  /**
   * How far a mark's value lies from what the scale gives at its place, in the unit of the axis.
   */
  public double residual(Curve.Tick tick) {
    return value(direction.place(tick)) - tick.value();
  }

  /**
   * How far the scale can lie from the true one anywhere between its marks, in points: twice its
   * standard error at the outer marks. 0 where no mark is left over to tell it.
   */
  public double error() {
    return scatter;
  }

  /** How much the value near a place changes over one point of the page. */
  public double perPoint(Point place) {
    return logarithmic ? value(place) * Math.log(10) * plane.steepness() : plane.steepness();
  }

  /**
   * How far the value at a place can be off when the place is off by some, and by as much as the
   * mark that lies farthest from the scale.
   */
  public double error(Point place, double placing) {
    double scaled = Math.hypot(plane.steepness() * placing, largest);
    return logarithmic ? value(place) * (Math.pow(10, scaled) - 1) : scaled;
  }

  /**
   * What the scale is straight in: the value, or its logarithm to base 10; what has none lies
   * beyond all paper.
   */
  double scaled(double value) {
    return logarithmic ? Math.log10(Math.max(value, Double.MIN_NORMAL)) : value;
  }

  private double scaled(Curve.Tick tick) {
    return scaled(tick.value());
  }

  Plane plane() {
    return plane;
  }
}
