package commonsheet.export;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A table of short entries for a terminal, a row per thing compared. Columns that do not fit beside
 * each other follow in a further table with the first columns repeated.
 */
final class TextTable {
  private static final String GAP = "  ";

  /**
   * A column.
   *
   * @param head its title, a line each
   * @param entries one per row
   * @param right whether entries are set to the right, as numbers are
   */
  record Column(List<String> head, List<String> entries, boolean right) {
    int width() {
      int head = head().stream().mapToInt(Wrapping::width).max().orElse(0);
      return Math.max(head, entries.stream().mapToInt(Wrapping::width).max().orElse(0));
    }
  }

  private final List<Column> fixed;
  private final List<Column> others = new ArrayList<>();

  /** A table whose first columns are repeated. */
  TextTable(List<Column> fixed) {
    this.fixed = List.copyOf(fixed);
  }

  void add(Column column) {
    others.add(column);
  }

  /** Writes the table in parts that fit into the width. */
  void write(int width, Appendable out) throws IOException {
    int taken = fixed.stream().mapToInt(c -> c.width() + GAP.length()).sum();
    List<Column> part = new ArrayList<>(fixed);
    int used = taken;
    for (Column column : others) {
      if (used + column.width() > width && part.size() > fixed.size()) {
        write(part, out);
        out.append('\n');
        part = new ArrayList<>(fixed);
        used = taken;
      }
      part.add(column);
      used += column.width() + GAP.length();
    }
    write(part, out);
  }

  private static void write(List<Column> columns, Appendable out) throws IOException {
    int heads = columns.stream().mapToInt(c -> c.head().size()).max().orElse(0);
    for (int line = 0; line < heads; line++) {
      List<String> texts = new ArrayList<>();
      for (Column column : columns) {
        int below = line - heads + column.head().size();
        texts.add(below < 0 ? "" : column.head().get(below));
      }
      row(columns, texts, out);
    }
    out.append(String.join(GAP, columns.stream().map(c -> "-".repeat(c.width())).toList()));
    out.append('\n');
    for (int row = 0; row < columns.get(0).entries().size(); row++) {
      int at = row;
      row(columns, columns.stream().map(c -> c.entries().get(at)).toList(), out);
    }
  }

  private static void row(List<Column> columns, List<String> texts, Appendable out)
      throws IOException {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < columns.size(); i++) {
      String space = " ".repeat(columns.get(i).width() - Wrapping.width(texts.get(i)));
      line.append(i == 0 ? "" : GAP);
      line.append(columns.get(i).right() ? space + texts.get(i) : texts.get(i) + space);
    }
    out.append(line.toString().stripTrailing()).append('\n');
  }
}
