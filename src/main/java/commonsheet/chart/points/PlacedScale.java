package commonsheet.chart.points;

import commonsheet.columns.ColumnException;
import commonsheet.columns.ColumnFile;
import commonsheet.columns.Heading;
import commonsheet.record.Curve;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Turns places into values by the reference marks of a file, and says how well. */
final class PlacedScale {
  /** How well a place is hit by hand, in pixels of the picture. Common practice, no source. */
  private static final double PLACING_PIXELS = 1;

  /** The same in points of the page: a sixth of a millimetre. Common practice, no source. */
  private static final double PLACING_POINTS = 0.5;

  /** How well a value is read off a scale by eye, as a share of it. Common practice, no source. */
  private static final double BY_EYE = 0.005;

  private static final int MARKS_OF_A_PLANE = 3;

  private final PlacedRows rows;
  private final AxisReference x;
  private final AxisReference y;
  private final PlaneReference plane;

  private PlacedScale(PlacedRows rows, AxisReference x, AxisReference y, PlaneReference plane) {
    this.rows = rows;
    this.x = x;
    this.y = y;
    this.plane = plane;
  }

  static PlacedScale of(PlacedRows rows, ColumnFile file) throws ColumnException {
    boolean placed =
        rows.curves().values().stream()
            .flatMap(line -> line.points().stream())
            .anyMatch(PlacedRows.Point::placed);
    if (!placed) {
      return new PlacedScale(rows, null, null, null);
    }
    List<PlaneReference.Mark> corners = new ArrayList<>();
    List<AxisReference.Mark> across = new ArrayList<>();
    List<AxisReference.Mark> down = new ArrayList<>();
    for (PlacedRows.Mark mark : rows.marks()) {
      if (mark.x() != null && mark.y() != null) {
        corners.add(new PlaneReference.Mark(mark.left(), mark.top(), mark.x(), mark.y()));
      }
      if (mark.x() != null) {
        across.add(new AxisReference.Mark(mark.left(), mark.x()));
      }
      if (mark.y() != null) {
        down.add(new AxisReference.Mark(mark.top(), mark.y()));
      }
    }
    boolean straight = !rows.headingX().logarithmic() && !rows.headingY().logarithmic();
    if (corners.size() >= MARKS_OF_A_PLANE && corners.size() == rows.marks().size() && straight) {
      PlaneReference plane = PlaneReference.of(corners);
      if (plane == null) {
        throw file.wrong("the reference marks lie on one line; place one of them off it");
      }
      return new PlacedScale(rows, null, null, plane);
    }
    return new PlacedScale(
        rows,
        axis(across, rows.headingX(), "x", file),
        axis(down, rows.headingY(), "y", file),
        null);
  }

  private static AxisReference axis(
      List<AxisReference.Mark> marks, Heading heading, String name, ColumnFile file)
      throws ColumnException {
    String axis = "the " + name + " axis (" + heading.text() + ")";
    if (marks.size() < 2) {
      throw file.wrong(
          axis
              + " has "
              + (marks.isEmpty() ? "no reference mark" : "one reference mark only")
              + "; give the places of two of its ticks with their values");
    }
    AxisReference.Mark first = marks.get(0);
    if (marks.stream().allMatch(m -> m.place() == first.place())
        || marks.stream().allMatch(m -> m.value() == first.value())) {
      throw file.wrong(
          axis
              + " has reference marks of one place or one value only; give two ticks that differ in"
              + " both");
    }
    if (heading.logarithmic() && marks.stream().anyMatch(m -> m.value() <= 0)) {
      throw file.wrong(axis + " is logarithmic and has a reference mark that is not above 0");
    }
    return AxisReference.of(marks, heading.logarithmic());
  }

  /** The values of a point along x and y. */
  List<Double> values(PlacedRows.Point point) {
    if (!point.placed()) {
      return List.of(point.first(), point.second());
    }
    return plane == null
        ? List.of(x.value(point.first()), y.value(point.second()))
        : List.of(
            PlaneReference.at(plane.x(), point.first(), point.second()),
            PlaneReference.at(plane.y(), point.first(), point.second()));
  }

  /** How far points may be off, by how they were given. */
  Curve.Uncertainty uncertainty(List<List<Double>> points) {
    double placing = rows.columns().onPage() ? PLACING_POINTS : PLACING_PIXELS;
    if (plane != null) {
      return new Curve.Uncertainty(plane.errorX(placing), plane.errorY(placing));
    }
    if (x != null) {
      return new Curve.Uncertainty(
          error(x, rows.marks().stream().filter(m -> m.x() != null).map(m -> m.left()), placing),
          error(y, rows.marks().stream().filter(m -> m.y() != null).map(m -> m.top()), placing));
    }
    return new Curve.Uncertainty(
        byEye(points, 0, rows.headingX(), rows.decimalsX()),
        byEye(points, 1, rows.headingY(), rows.decimalsY()));
  }

  private static double error(AxisReference axis, Stream<Double> places, double placing) {
    return places.mapToDouble(place -> axis.error(place, placing)).max().orElse(0);
  }

  private static double byEye(List<List<Double>> points, int axis, Heading heading, int decimals) {
    double least = points.stream().mapToDouble(p -> p.get(axis)).min().orElse(0);
    double most = points.stream().mapToDouble(p -> p.get(axis)).max().orElse(0);
    double digit = Math.abs(heading.canonical(Math.pow(10, -decimals)) - heading.canonical(0)) / 2;
    return Math.max(BY_EYE * (most - least), digit);
  }

  /** The marks of the x axis where they are places of the page and the chart stands upright. */
  List<Curve.Tick> ticksX() {
    return x == null || !rows.columns().onPage()
        ? List.of()
        : rows.marks().stream()
            .filter(mark -> mark.x() != null)
            .map(mark -> new Curve.Tick(mark.left(), mark.x(), mark.textX()))
            .toList();
  }

  /** The same of the y axis. */
  List<Curve.Tick> ticksY() {
    return y == null || !rows.columns().onPage()
        ? List.of()
        : rows.marks().stream()
            .filter(mark -> mark.y() != null)
            .map(mark -> new Curve.Tick(mark.top(), mark.y(), mark.textY()))
            .toList();
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
    if (plane != null) {
      return "by " + rows.marks().size() + " marks known along both axes";
    }
    return x == null ? "values as given" : "by " + rows.marks().size() + " reference marks";
  }
}
