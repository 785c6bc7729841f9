package commonsheet.export;

import commonsheet.record.Review;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A comparison turned for people: cells as columns, quantities as lines. A line that no cell fills
 * is left out; an entry is a list of texts, empty where the record says nothing.
 */
record Grid(List<String> heads, List<Line> lines) {
  /** One quantity, or one other thing, of all cells. */
  record Line(String title, List<List<String>> entries) {
    boolean isEmpty() {
      return entries.stream().allMatch(List::isEmpty);
    }
  }

  static final String NONE = "-";
  static final String LEGEND =
      "?: the tool is unsure of this value; compare it with the sheet."
          + " -: not on the sheet, or not read."
          + " Missing: what a pack builder needs to know and the record does not say.";
  static final String EMPTY = "There are no cells to compare.";

  /** All cells of the comparison. */
  static Grid of(ComparisonTable table) {
    List<ComparisonRow> rows = table.rows();
    List<Line> lines = new ArrayList<>();
    lines.add(line("Maker", rows, row -> one(row.cell().maker())));
    lines.add(line("Model", rows, row -> one(row.cell().model())));
    lines.add(line("Designation", rows, row -> one(row.cell().designation())));
    lines.add(line("Size", rows, row -> one(row.size())));
    lines.add(line("Chemistry", rows, row -> one(row.cell().chemistry())));
    lines.add(line("Form", rows, row -> one(row.cell().form())));
    for (Column column : table.columns()) {
      String title = column.title() + " (" + ComparisonLayout.standard().unit(column).shown() + ')';
      lines.add(
          line(
              title,
              rows,
              row ->
                  row.statements(column).stream()
                      .map(statement -> StatementText.of(column, statement))
                      .toList()));
    }
    lines.add(line("Missing", rows, Grid::missing));
    lines.add(line("State", rows, row -> one(state(row.review()))));
    lines.add(line("Source", rows, row -> one(source(row))));
    return new Grid(
        rows.stream().map(ComparisonRow::name).toList(),
        lines.stream().filter(line -> !line.isEmpty()).toList());
  }

  /** The cells from one index, inclusive, to another, exclusive; with all lines. */
  Grid cells(int from, int to) {
    return new Grid(
        heads.subList(from, to),
        lines.stream()
            .map(line -> new Line(line.title(), line.entries().subList(from, to)))
            .toList());
  }

  /** The grid in parts of nearly equal size, of {@code most} cells at the most. */
  List<Grid> parts(int most) {
    int parts = (heads.size() + most - 1) / most;
    List<Grid> all = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      all.add(cells(part * heads.size() / parts, (part + 1) * heads.size() / parts));
    }
    return all;
  }

  private static Line line(
      String title, List<ComparisonRow> rows, Function<ComparisonRow, List<String>> entry) {
    return new Line(title, rows.stream().map(entry).toList());
  }

  private static List<String> one(String text) {
    return text.isEmpty() ? List.of() : List.of(text);
  }

  private static List<String> missing(ComparisonRow row) {
    return row.missing().isEmpty() ? List.of("nothing") : row.missing();
  }

  private static String state(Review review) {
    StringBuilder state = new StringBuilder(Printed.clean(review.state()));
    if (review.state().equals(Review.REOPENED)) {
      state.append(", approved before");
    }
    if (review.approvedBy() != null) {
      state.append(" by ").append(Printed.clean(review.approvedBy()));
    }
    if (review.approvedAt() != null) {
      state.append(", ").append(Printed.clean(review.approvedAt()));
    }
    return state.toString();
  }

  private static String source(ComparisonRow row) {
    return row.pages().isEmpty()
        ? row.sourceFile()
        : row.sourceFile() + ", p. " + PageRanges.text(row.pages());
  }
}
