package commonsheet.chart.points;

import commonsheet.columns.ColumnException;
import commonsheet.columns.ColumnFile;
import commonsheet.columns.ColumnVocabulary;
import commonsheet.columns.Heading;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Curves whose points a person placed on a chart, from a CSV file; method {@code hand-placed}. */
public final class PlacedPoints {
  private PlacedPoints() {}

  /**
   * Reads a file of points. Points are given in the values of the axes, or by their places with
   * marks of known value: two per axis, or three with both values for a chart that is turned or
   * skewed. {@code docs/points.md} tells the columns.
   *
   * @return the curves in the order of the file, without ids; at least one
   * @throws ColumnException where the file is none, lacks a column, a unit or a mark, or holds
   *     something that is no number
   */
  public static List<Curve> read(Path path) throws ColumnException {
    ColumnFile file = ColumnFile.of(path);
    PlacedRows rows = PlacedRows.read(file);
    if (rows.curves().isEmpty()) {
      throw file.wrong("the file holds no points, only names of columns or reference marks");
    }
    PlacedScale scale = PlacedScale.of(rows, file);
    String sha256 = file.sha256();
    List<Curve> curves = new ArrayList<>();
    for (Map.Entry<String, PlacedRows.Line> entry : rows.curves().entrySet()) {
      curves.add(curve(entry.getKey(), entry.getValue(), rows, scale, file, sha256));
    }
    return curves;
  }

  private static Curve curve(
      String name,
      PlacedRows.Line line,
      PlacedRows rows,
      PlacedScale scale,
      ColumnFile file,
      String sha256)
      throws ColumnException {
    String x = rows.headingX().meaning().quantity();
    String y = rows.headingY().meaning().quantity();
    String kind = line.kind() == null ? ColumnVocabulary.standard().kind(x, y) : line.kind();
    if (kind == null) {
      throw file.wrong(
          line.line(),
          "a chart of "
              + y
              + " over "
              + x
              + " can show several things; say which in a column kind, such as charge");
    }
    List<List<Double>> points = new ArrayList<>();
    for (PlacedRows.Point point : line.points()) {
      points.add(scale.values(point));
    }
    List<String> doubts = doubts(kind, line.conditions());
    return new Curve(
        null,
        kind,
        name.isEmpty() ? null : name,
        line.conditions(),
        axis(rows.headingX(), scale.ticksX()),
        axis(rows.headingY(), scale.ticksY()),
        points,
        scale.uncertainty(points),
        Method.HAND_PLACED,
        new Evidence(
            scale.box().isEmpty() ? null : line.page(),
            line.page() == null ? null : scale.box(),
            null,
            Method.HAND_PLACED,
            null,
            null,
            null,
            scale.note(),
            null,
            file.name(),
            sha256),
        doubts.isEmpty() ? Standing.READ : Standing.UNSURE,
        doubts);
  }

  private static Curve.Axis axis(Heading heading, List<Curve.Tick> ticks) {
    boolean said = heading.logarithmic() && !ticks.isEmpty();
    return new Curve.Axis(
        heading.meaning().quantity(),
        heading.meaning().unit(),
        ticks,
        said ? Curve.Axis.LOGARITHMIC : null);
  }

  private static List<String> doubts(String kind, Conditions conditions) {
    boolean unknown =
        kind.equals("discharge")
            && conditions.get(Conditions.DISCHARGE_CURRENT) == null
            && conditions.get(Conditions.DISCHARGE_RATE) == null;
    return unknown
        ? List.of("No column dischargeRate or dischargeCurrent says which current it is.")
        : List.of();
  }
}
