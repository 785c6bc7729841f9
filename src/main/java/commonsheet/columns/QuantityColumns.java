package commonsheet.columns;

import java.util.ArrayList;
import java.util.List;

/** The columns of a table by the quantity they hold, and their cells in canonical units. */
public final class QuantityColumns {
  private static final int UNKNOWN_UNIT = 1000;

  private final ColumnFile file;
  private final ColumnTable table;

  public QuantityColumns(ColumnFile file, ColumnTable table) {
    this.file = file;
    this.table = table;
  }

  /**
   * The column of a quantity, which has to be there.
   *
   * @param advice what to do about a missing one, such as "name it as docs/points.md says"
   * @throws ColumnException where no column holds the quantity
   */
  public int require(String quantity, String advice) throws ColumnException {
    int column = find(quantity);
    if (column < 0) {
      List<String> there = new ArrayList<>();
      for (Heading heading : table.headings()) {
        if (!heading.text().isEmpty()) {
          there.add("\"" + heading.text() + "\"");
        }
      }
      throw file.wrong(
          "there is no column for the "
              + quantity
              + (there.isEmpty()
                  ? "; a line has to name the columns, such as Test Time / s,Current / A,Voltage / V; "
                  : " among " + String.join(", ", there) + "; ")
              + advice);
    }
    return column;
  }

  /** The column of a quantity whose name is preferred and whose unit is known; -1 for none. */
  public int find(String quantity) {
    int best = -1;
    for (int i = 0; i < table.headings().size(); i++) {
      if (table.headings().get(i).names(quantity)
          && (best < 0 || cost(table.headings().get(i)) < cost(table.headings().get(best)))) {
        best = i;
      }
    }
    return best;
  }

  private static int cost(Heading heading) {
    int withoutUnit = heading.unit() == null && !heading.clock() ? UNKNOWN_UNIT : 0;
    return heading.meaning().rank() + withoutUnit;
  }

  /**
   * Insists on a unit.
   *
   * @param units those to choose from, for the message
   * @throws ColumnException where the column's heading names none
   */
  public void requireUnit(int column, String units) throws ColumnException {
    Heading heading = table.headings().get(column);
    if (heading.unit() == null) {
      throw file.wrong(
          "column \""
              + heading.text()
              + "\" does not say its unit; name it with one of "
              + units
              + " behind a slash");
    }
  }

  /**
   * A cell in the unit its quantity is kept in; the column has one.
   *
   * @throws ColumnException where it is no number
   */
  public double value(ColumnTable.Row row, int column) throws ColumnException {
    Heading heading = table.headings().get(column);
    double number = table.number(row, column);
    return heading.unit().equals(heading.meaning().unit()) ? number : heading.canonical(number);
  }

  /**
   * A time in s: from a number with a unit, a clock, or a date with a time.
   *
   * @throws ColumnException where it is none, or a number whose column names no unit
   */
  public double seconds(ColumnTable.Row row, int column) throws ColumnException {
    Double told = TimeText.seconds(row.cell(column));
    if (told != null) {
      return told;
    }
    if (TimeText.looksLikeDate(row.cell(column))) {
      throw file.wrong(
          row.line(),
          "\"" + row.cell(column) + "\" is no time; write seconds, 1:30:00 or 2026-05-03 10:15:00");
    }
    requireUnit(column, "s, min or h");
    return value(row, column);
  }
}
