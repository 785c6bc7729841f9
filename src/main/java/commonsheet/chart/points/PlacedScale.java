package commonsheet.chart.points;

import commonsheet.chart.reference.AxisReference;
import commonsheet.chart.reference.Direction;
import commonsheet.chart.reference.PlotReference;
import commonsheet.chart.reference.ReferenceException;
import commonsheet.columns.ColumnException;
import commonsheet.columns.ColumnFile;
import commonsheet.columns.Heading;
import commonsheet.record.Curve;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.List;

/** Turns places into values by the reference marks of a file, and says how well. */
final class PlacedScale {
  /** How well a place is hit by hand, in pixels of the picture. Common practice, no source. */
  private static final double PLACING_PIXELS = 1;

  /** How well a value is read off a scale by eye, as a share of it. Common practice, no source. */
  private static final double BY_EYE = 0.005;

  private static final int MARKS_OF_A_PLANE = 3;

  private final PlacedRows rows;
  private final List<Curve.Tick> ticksX;
  private final List<Curve.Tick> ticksY;
  private final PlotReference reference;
  private final boolean turned;

  private PlacedScale(
      PlacedRows rows,
      List<Curve.Tick> ticksX,
      List<Curve.Tick> ticksY,
      PlotReference reference,
      boolean turned) {
    this.rows = rows;
    this.ticksX = ticksX;
    this.ticksY = ticksY;
    this.reference = reference;
    this.turned = turned;
  }

  static PlacedScale of(PlacedRows rows, ColumnFile file) throws ColumnException {
    boolean placed =
        rows.curves().values().stream()
            .flatMap(line -> line.points().stream())
            .anyMatch(PlacedRows.Point::placed);
    if (!placed) {
      return new PlacedScale(rows, List.of(), List.of(), null, false);
    }
    boolean straight = !rows.headingX().logarithmic() && !rows.headingY().logarithmic();
    boolean turned =
        straight
            && rows.marks().size() >= MARKS_OF_A_PLANE
            && rows.marks().stream().allMatch(mark -> mark.x() != null && mark.y() != null);
    List<Curve.Tick> across = new ArrayList<>();
    List<Curve.Tick> down = new ArrayList<>();
    for (PlacedRows.Mark mark : rows.marks()) {
      if (mark.x() != null) {
        Double top = turned ? mark.top() : null;
        across.add(new Curve.Tick(mark.left(), mark.x(), mark.textX(), top));
      }
      if (mark.y() != null) {
        Double left = turned ? mark.left() : null;
        down.add(new Curve.Tick(mark.top(), mark.y(), mark.textY(), left));
      }
    }
    PlotReference reference =
        new PlotReference(
            axis(across, rows.headingX(), Direction.ACROSS, file),
            axis(down, rows.headingY(), Direction.DOWN, file));
    return new PlacedScale(rows, across, down, reference, turned);
  }

  private static AxisReference axis(
      List<Curve.Tick> marks, Heading heading, Direction direction, ColumnFile file)
      throws ColumnException {
    String name = "the " + direction.letter() + " axis (" + heading.text() + ")";
    try {
      return AxisReference.of(marks, direction, heading.logarithmic(), name);
    } catch (ReferenceException none) {
      throw file.wrong(none.getMessage());
    }
  }

  /** The values of a point along x and y. */
  List<Double> values(PlacedRows.Point point) {
    return point.placed()
        ? reference.values(new Point(point.first(), point.second()))
        : List.of(point.first(), point.second());
  }

  /** How far points may be off, by how they were given. */
  Curve.Uncertainty uncertainty(List<List<Double>> points) {
    if (reference != null) {
      return new Curve.Uncertainty(
          error(reference.x(), ticksX, Direction.ACROSS),
          error(reference.y(), ticksY, Direction.DOWN));
    }
    return new Curve.Uncertainty(
        byEye(points, 0, rows.headingX(), rows.decimalsX()),
        byEye(points, 1, rows.headingY(), rows.decimalsY()));
  }

  private double error(AxisReference axis, List<Curve.Tick> ticks, Direction direction) {
    double placing = rows.columns().onPage() ? AxisReference.PLACING : PLACING_PIXELS;
    return ticks.stream()
        .mapToDouble(tick -> axis.error(direction.place(tick), placing))
        .max()
        .orElse(0);
  }

  private static double byEye(List<List<Double>> points, int axis, Heading heading, int decimals) {
    double least = points.stream().mapToDouble(p -> p.get(axis)).min().orElse(0);
    double most = points.stream().mapToDouble(p -> p.get(axis)).max().orElse(0);
    double digit = Math.abs(heading.canonical(Math.pow(10, -decimals)) - heading.canonical(0)) / 2;
    return Math.max(BY_EYE * (most - least), digit);
  }

  /** The marks of the x axis where they are places of the page. */
  List<Curve.Tick> ticksX() {
    return rows.columns().onPage() ? ticksX : List.of();
  }

  /** The same of the y axis. */
  List<Curve.Tick> ticksY() {
    return rows.columns().onPage() ? ticksY : List.of();
  }

  /** The box around the marks on the page; empty where places are none of the page. */
  List<Double> box() {
    if (!rows.columns().onPage() || rows.marks().isEmpty()) {
      return List.of();
    }
    List<Double> across =
        rows.marks().stream().map(PlacedRows.Mark::left).filter(p -> p != null).sorted().toList();
    List<Double> down =
        rows.marks().stream().map(PlacedRows.Mark::top).filter(p -> p != null).sorted().toList();
    double left = across.get(0);
    double top = down.get(0);
    return List.of(
        left, top, across.get(across.size() - 1) - left, down.get(down.size() - 1) - top);
  }

  /** How the values came about. */
  String note() {
    if (turned) {
      return "by " + rows.marks().size() + " marks known along both axes";
    }
    return reference == null ? "values as given" : "by " + rows.marks().size() + " reference marks";
  }
}
