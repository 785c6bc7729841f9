package commonsheet.chart.points;

import commonsheet.columns.ColumnException;
import commonsheet.columns.ColumnFile;
import commonsheet.columns.ColumnTable;
import commonsheet.record.Conditions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** One row of a file of points. */
final class PlacedRow {
  private final ColumnFile file;
  private final ColumnTable table;
  private final PlacedColumns columns;
  private final ColumnTable.Row row;

  PlacedRow(ColumnFile file, ColumnTable table, PlacedColumns columns, ColumnTable.Row row) {
    this.file = file;
    this.table = table;
    this.columns = columns;
    this.row = row;
  }

  /** Adds the row to the marks or to its curve. */
  void addTo(List<PlacedRows.Mark> marks, Map<String, PlacedRows.Line> curves, int[] decimals)
      throws ColumnException {
    Double left = columns.hasPlaces() ? number(columns.left()) : null;
    Double top = columns.hasPlaces() ? number(columns.top()) : null;
    Double x = value(columns.valueX());
    Double y = value(columns.valueY());
    boolean placed = left != null || top != null;
    boolean valued = x != null || y != null;
    if (placed && valued) {
      if (x != null && left == null || y != null && top == null) {
        throw file.wrong(
            row.line(), "a reference mark needs its place along the axis whose value it gives");
      }
      String textX = row.cell(columns.valueX());
      String textY = row.cell(columns.valueY());
      marks.add(new PlacedRows.Mark(row.line(), left, top, x, y, textX, textY));
      return;
    }
    boolean whole = placed ? left != null && top != null : x != null && y != null;
    if (!whole) {
      throw file.wrong(
          row.line(), "a point needs two numbers: its place across and down, or its two values");
    }
    if (valued) {
      decimals[0] = Math.max(decimals[0], table.decimals(row, columns.valueX()));
      decimals[1] = Math.max(decimals[1], table.decimals(row, columns.valueY()));
    }
    line(curves).points().add(new PlacedRows.Point(placed, placed ? left : x, placed ? top : y));
  }

  /** The row's curve, whose page, kind and conditions may stand in its first row only. */
  private PlacedRows.Line line(Map<String, PlacedRows.Line> curves) throws ColumnException {
    String name = columns.curve() < 0 ? "" : row.cell(columns.curve());
    PlacedRows.Line known = curves.get(name);
    Conditions conditions = known == null ? Conditions.NONE : known.conditions();
    for (Map.Entry<String, Integer> column : columns.conditions().entrySet()) {
      Double value = number(column.getValue());
      Double before = conditions.get(column.getKey());
      if (value != null && before != null && !value.equals(before)) {
        throw file.wrong(
            row.line(),
            "the points of curve \""
                + name
                + "\" differ in "
                + column.getKey()
                + "; give each curve a name of its own");
      }
      if (value != null) {
        conditions = conditions.with(column.getKey(), value);
      }
    }
    PlacedRows.Line line =
        new PlacedRows.Line(
            known == null ? row.line() : known.line(),
            page(known == null ? null : known.page()),
            kind(known == null ? null : known.kind()),
            conditions,
            known == null ? new ArrayList<>() : known.points());
    curves.put(name, line);
    return line;
  }

  private Integer page(Integer before) throws ColumnException {
    Double page = columns.page() < 0 ? null : number(columns.page());
    if (page != null && (page < 1 || page != Math.rint(page))) {
      throw file.wrong(row.line(), "pages are counted from 1");
    }
    return page == null ? before : Integer.valueOf(page.intValue());
  }

  private String kind(String before) throws ColumnException {
    String kind = columns.kind() < 0 ? "" : row.cell(columns.kind());
    if (!kind.isEmpty() && !kind.matches("[a-z]+(-[a-z]+)*")) {
      throw file.wrong(
          row.line(),
          "\"" + kind + "\" is no kind of chart; use lower-case words joined by hyphens");
    }
    return kind.isEmpty() ? before : kind;
  }

  /** The number in a cell, or null where it is empty. */
  private Double number(int column) throws ColumnException {
    return row.cell(column).isEmpty() ? null : Double.valueOf(table.number(row, column));
  }

  private Double value(int column) throws ColumnException {
    Double number = number(column);
    return number == null ? null : Double.valueOf(table.headings().get(column).canonical(number));
  }
}
