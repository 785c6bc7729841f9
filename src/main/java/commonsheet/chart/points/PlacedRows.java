package commonsheet.chart.points;

import commonsheet.columns.ColumnException;
import commonsheet.columns.ColumnFile;
import commonsheet.columns.ColumnTable;
import commonsheet.columns.Heading;
import commonsheet.record.Conditions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The rows of a file of points, told apart: reference marks, which have a place and a value, and
 * points, which have one or the other.
 *
 * @param columns which column holds what
 * @param headingX of the values along the x axis
 * @param headingY of the values along the y axis
 * @param marks in the order of the file
 * @param curves points by the name of their curve
 * @param decimalsX digits behind the point of the values along the x axis
 * @param decimalsY digits behind the point of the values along the y axis
 */
record PlacedRows(
    PlacedColumns columns,
    Heading headingX,
    Heading headingY,
    List<Mark> marks,
    Map<String, Line> curves,
    int decimalsX,
    int decimalsY) {
  /** More points than anyone places by hand. */
  private static final int MOST_ROWS = 100_000;

  /** A mark of one scale or both; what it does not have is null. Values are canonical. */
  record Mark(long line, Double left, Double top, Double x, Double y, String textX, String textY) {}

  /**
   * The points of one curve.
   *
   * @param points place or value, across and down or along x and y
   */
  record Line(long line, Integer page, String kind, Conditions conditions, List<Point> points) {}

  /** A point by its place, or by its canonical values. */
  record Point(boolean placed, double first, double second) {}

  static PlacedRows read(ColumnFile file) throws ColumnException {
    try (ColumnTable table = ColumnTable.open(file, PlacedColumns::suits)) {
      PlacedColumns columns = PlacedColumns.of(table.headings(), file);
      List<Mark> marks = new ArrayList<>();
      Map<String, Line> curves = new LinkedHashMap<>();
      int[] decimals = new int[2];
      int rows = 0;
      for (ColumnTable.Row row = table.next(); row != null; row = table.next()) {
        if (++rows > MOST_ROWS) {
          throw file.wrong("the file has more than " + MOST_ROWS + " points; thin them");
        }
        new PlacedRow(file, table, columns, row).addTo(marks, curves, decimals);
      }
      return new PlacedRows(
          columns,
          table.headings().get(columns.valueX()),
          table.headings().get(columns.valueY()),
          marks,
          curves,
          decimals[0],
          decimals[1]);
    }
  }
}
