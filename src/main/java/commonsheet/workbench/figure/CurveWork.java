package commonsheet.workbench.figure;

import commonsheet.chart.reference.AxisReference;
import commonsheet.chart.reference.Direction;
import commonsheet.chart.reference.PlacedLine;
import commonsheet.chart.reference.PlotReference;
import commonsheet.chart.reference.ReferenceException;
import commonsheet.chart.text.ChartKind;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.review.ReviewException;
import commonsheet.sheet.Point;
import java.util.Arrays;
import java.util.List;

/** Makes one curve of a chart as a person left it. */
final class CurveWork {
  /** A curve of fewer points is none. */
  private static final int LEAST_POINTS = 2;

  /** Least error of a line that was followed on a scale nobody read, in points; as in reading. */
  private static final double SCALE = 0.05;

  private static final String NO_CURRENT =
      "Nothing says at which current this curve was taken; give its discharge rate or current.";

  private final GivenCurve given;
  private final GivenFigure figure;
  private final Curve.Axis x;
  private final Curve.Axis y;
  private final CellRecord record;

  CurveWork(GivenCurve given, GivenFigure figure, CellRecord record) throws ReviewException {
    this.given = given;
    this.figure = figure;
    this.record = record;
    this.x = axis(given.x(), Direction.ACROSS);
    this.y = axis(given.y(), Direction.DOWN);
    if (Arrays.stream(ChartKind.values()).noneMatch(k -> k.label().equals(given.kind()))) {
      throw new ReviewException("\"" + given.kind() + "\" is no kind of chart");
    }
  }

  private Curve.Axis axis(String key, Direction direction) throws ReviewException {
    GivenAxis axis = figure.axis(key, given.name());
    if (axis.direction() != direction) {
      throw new ReviewException(
          given.name()
              + " takes an axis along "
              + direction.letter()
              + ", which "
              + key
              + " is not");
    }
    return axis.axis();
  }

  /** The curve in place of one of the record; that one itself where nothing is changed. */
  Curve changed(Curve before) throws ReviewException {
    Conditions conditions = given.over(before.conditions());
    boolean rescaled = !x.equals(before.x()) || !y.equals(before.y());
    boolean redrawn = rescaled || given.places() != null;
    boolean renamed =
        !given.kind().equals(before.kind())
            || !java.util.Objects.equals(given.label(), before.label())
            || !conditions.equals(before.conditions());
    if (!redrawn && !renamed) {
      return before;
    }
    if (redrawn && before.evidence().page() == null) {
      throw new ReviewException(
          given.name() + " stands on no chart; only its label and conditions can be changed");
    }
    List<List<Double>> points = before.points();
    Curve.Uncertainty uncertainty = before.uncertainty();
    if (redrawn) {
      checkMeasure(x, before.x());
      checkMeasure(y, before.y());
      PlacedLine.Values values = line(before).values(reference());
      points = values.points();
      uncertainty = values.uncertainty();
    }
    Method method = method(before.method());
    boolean onlyRescaled = rescaled && !renamed && given.places() == null;
    List<String> doubts = onlyRescaled ? before.doubts() : doubts(conditions);
    return new Curve(
        before.id(),
        given.kind(),
        given.label(),
        conditions,
        x,
        y,
        points,
        uncertainty,
        method,
        evidence(before, method),
        standing(before, onlyRescaled, doubts),
        doubts,
        original(before, redrawn));
  }

  /** A curve that was not read. */
  Curve added() throws ReviewException {
    if (given.places() == null) {
      throw new ReviewException(given.name() + " has no points");
    }
    checkMeasure(x, null);
    checkMeasure(y, null);
    PlacedLine.Values values = line(null).values(reference());
    Conditions conditions = given.over(Conditions.NONE);
    Method method = method(Method.HAND_PLACED);
    List<String> doubts = doubts(conditions);
    return new Curve(
        null,
        given.kind(),
        given.label(),
        conditions,
        x,
        y,
        values.points(),
        values.uncertainty(),
        method,
        new Evidence(
            figure.page(),
            box(),
            given.label(),
            method,
            null,
            null,
            null,
            CurveNote.added(given),
            null),
        doubts.isEmpty() ? Standing.CORRECTED : Standing.UNSURE,
        doubts);
  }

  private List<Double> box() {
    return List.of(figure.box().x(), figure.box().y(), figure.box().width(), figure.box().height());
  }

  /**
   * Changing an axis changes all its curves, those nobody looked at as well: what was doubtful in
   * them stays so, and what was rejected stays rejected.
   */
  private static Standing standing(Curve before, boolean onlyRescaled, List<String> doubts) {
    if (onlyRescaled && before.standing() == Standing.REJECTED) {
      return Standing.REJECTED;
    }
    return doubts.isEmpty() ? Standing.CORRECTED : Standing.UNSURE;
  }

  private List<String> doubts(Conditions conditions) {
    boolean unknown =
        given.kind().equals(ChartKind.DISCHARGE.label())
            && conditions.get(Conditions.DISCHARGE_CURRENT) == null
            && conditions.get(Conditions.DISCHARGE_RATE) == null;
    return unknown ? List.of(NO_CURRENT) : List.of();
  }

  private PlotReference reference() throws ReviewException {
    try {
      return PlotReference.of(x, y);
    } catch (ReferenceException none) {
      throw new ReviewException(none.getMessage());
    }
  }

  private static void checkMeasure(Curve.Axis axis, Curve.Axis before) throws ReviewException {
    boolean kept =
        before != null
            && axis.quantity().equals(before.quantity())
            && axis.unit().equals(before.unit());
    if (!kept && !Measures.isKept(axis.quantity(), axis.unit())) {
      throw new ReviewException(
          "an axis of " + axis.quantity() + " is not kept in " + axis.unit() + "; choose another");
    }
  }

  private Method method(Method before) {
    if (given.places() == null) {
      return before;
    }
    if (given.placed() > 0) {
      return Method.HAND_PLACED;
    }
    return given.traced() == null ? before : given.traced().method();
  }

  /**
   * Its places, and how far off they may be.
   *
   * @param before null for a new curve
   */
  private PlacedLine line(Curve before) throws ReviewException {
    PlotReference reference = reference();
    PlacedLine old = before == null ? null : rescaled(before, reference);
    if (given.places() == null) {
      if (old == null) {
        throw new ReviewException(
            given.name() + " has no places on the page; trace it by a click or place its points");
      }
      return old;
    }
    if (given.places().size() < LEAST_POINTS) {
      throw new ReviewException(
          given.name() + " needs two points at least; reject a curve that is none");
    }
    List<Point> places = given.places();
    double errorX = error(reference.x(), x, true);
    double errorY = error(reference.y(), y, false);
    if (given.traced() != null) {
      errorX += given.traced().errorX();
      errorY += given.traced().errorY();
      PlacedLine traced = new PlacedLine(places, errorX, errorY);
      // No better than the curve was read by the same scale.
      PlacedLine careful = old == null ? traced : traced.with(places, old.errorX(), old.errorY());
      return given.placed() == 0 ? careful : byHand(careful, places);
    }
    PlacedLine kept = old == null ? new PlacedLine(places, errorX, errorY) : old;
    boolean byHand = given.placed() > 0 || old == null;
    return byHand ? byHand(kept, places) : kept.with(places, 0, 0);
  }

  private static PlacedLine byHand(PlacedLine line, List<Point> places) {
    return line.with(places, AxisReference.PLACING, AxisReference.PLACING);
  }

  private PlacedLine rescaled(Curve before, PlotReference after) {
    PlotReference was = PlotReference.of(before).orElse(null);
    PlacedLine line = PlacedLine.of(before).orElse(null);
    return was == null || line == null
        ? null
        : line.rescaled(
            was,
            after,
            Ticks.arePlaced(x, List.of(before.x())),
            Ticks.arePlaced(y, List.of(before.y())));
  }

  /** How far the scale can be off: what its ticks tell, and how they were placed. */
  private double error(AxisReference reference, Curve.Axis axis, boolean isX) {
    List<Curve.Axis> known =
        record.curves().stream()
            .filter(c -> c.method() != Method.HAND_PLACED)
            .map(c -> isX ? c.x() : c.y())
            .toList();
    double placing = Ticks.arePlaced(axis, known) ? AxisReference.PLACING : SCALE;
    return Math.hypot(placing, reference.error());
  }

  private Evidence evidence(Curve before, Method method) {
    Evidence old = before.evidence();
    return new Evidence(
        old.page(),
        old.box(),
        old.text(),
        method,
        old.rule(),
        old.words(),
        old.confidence(),
        CurveNote.changed(before, given, x, y),
        old.from(),
        old.file(),
        old.sha256());
  }

  private static Curve.Original original(Curve before, boolean redrawn) {
    Curve.Original first = before.original();
    List<List<Double>> points =
        first != null && first.points() != null ? first.points() : redrawn ? before.points() : null;
    return first == null
        ? new Curve.Original(before.label(), before.conditions(), points)
        : new Curve.Original(first.label(), first.conditions(), points);
  }
}
