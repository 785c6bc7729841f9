package commonsheet.layout;

import commonsheet.sheet.Table;
import java.util.List;

/**
 * Turns the rows of a table into entries: what each column holds, which labels a row has, what
 * stands beside it.
 */
final class Tables {
  /** The edges of a table that goes on lie this near, in points, to those of its first part. */
  private static final double SAME_EDGE = 12;

  /** Where the columns are models, the right edge moves with the width of the last figures. */
  private static final double SAME_EDGE_OF_MODELS = 60;

  private final Vocabulary vocabulary;
  private final Figures parser;
  private final Naming naming;

  Tables(Vocabulary vocabulary, Figures parser, Naming naming) {
    this.vocabulary = vocabulary;
    this.parser = parser;
    this.naming = naming;
  }

  /**
   * The entries of a table.
   *
   * @param section the heading above the table
   * @param context the paragraph above the table
   * @param before the table that may go on in this one, or null
   */
  Result entries(int page, Table table, String section, Passage context, Carry before) {
    Table turned = new ModelNames(parser, naming).inColumns(table);
    Table read = new PairedColumns(parser, naming).inOnePair(turned);
    Grid grid = new Grid(page, read, parser);
    TableRows rows = new TableRows(grid, vocabulary, parser, naming, section, context);
    if (before != null && before.goesOnIn(read)) {
      rows.takeOver(before);
    }
    List<Entry> entries = rows.entries();
    return new Result(entries, rows.carry());
  }

  /** What a table gave, and what a continuation of it on the next page must know. */
  record Result(List<Entry> entries, Carry carry) {}

  /** The columns and the last labels of a table that may go on on the next page. */
  record Carry(
      double left,
      double right,
      List<Role> roles,
      List<Passage> headings,
      List<Passage> labels,
      String section) {
    /** Columns of several models hold for the tables below on the same page. */
    boolean hasModels() {
      return roles.contains(Role.MODEL);
    }

    boolean goesOnIn(Table table) {
      double edge = hasModels() ? SAME_EDGE_OF_MODELS : SAME_EDGE;
      return table.columns() == roles.size()
          && Math.abs(table.box().x() - left) < SAME_EDGE
          && Math.abs(table.box().right() - right) < edge;
    }
  }
}
