package commonsheet.export;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a comparison for a terminal of a given width: cells as columns, quantities as lines. Cells
 * that do not fit beside each other follow in further tables.
 */
public final class TextComparison {
  /** Below this width, words break too often to be read; a narrower terminal wraps by itself. */
  private static final int NARROWEST = 40;

  /** A cell's column is at least this wide, enough for {@code 2.5 (0.2 C discharge,}. */
  private static final int NARROWEST_CELL = 22;

  private static final String GAP = "  ";

  private final int width;
  private final Appendable out;

  private TextComparison(int width, Appendable out) {
    this.width = Math.max(NARROWEST, width);
    this.out = out;
  }

  /**
   * Writes the tables, the legend and the caution; lines end with LF.
   *
   * @param width columns of the terminal; less than 40 counts as 40
   */
  public static void write(ComparisonTable table, int width, Appendable out) throws IOException {
    new TextComparison(width, out).write(table);
  }

  private void write(ComparisonTable table) throws IOException {
    Grid grid = Grid.of(table);
    if (table.rows().isEmpty()) {
      out.append(Grid.EMPTY).append("\n\n");
    }
    int titles = titleWidth(grid);
    int most = Math.max(1, (width - titles) / (GAP.length() + NARROWEST_CELL));
    List<Grid> parts = grid.parts(most);
    for (Grid part : parts) {
      part(part, titles);
      out.append('\n');
    }
    for (String line : Wrapping.wrap(Grid.LEGEND, width)) {
      out.append(line).append('\n');
    }
    out.append('\n');
    for (String line : Wrapping.wrap(Caution.TEXT, width)) {
      out.append(line).append('\n');
    }
  }

  /** As wide as the longest title, but at most a third of the terminal. */
  private int titleWidth(Grid grid) {
    int longest = grid.lines().stream().mapToInt(l -> Wrapping.width(l.title())).max().orElse(0);
    return Math.min(longest, width / 3);
  }

  private void part(Grid part, int titles) throws IOException {
    int cells = part.heads().size();
    int room = (width - titles) / cells - GAP.length();
    List<Integer> widths = new ArrayList<>(List.of(titles));
    for (int cell = 0; cell < cells; cell++) {
      widths.add(Math.min(room, longest(part, cell)));
    }
    List<List<String>> head = new ArrayList<>(List.of(List.of()));
    part.heads().forEach(name -> head.add(List.of(name)));
    row(head, widths);
    List<String> rules = widths.stream().map("-"::repeat).toList();
    out.append(String.join(GAP, rules)).append('\n');
    for (Grid.Line line : part.lines()) {
      List<List<String>> entries = new ArrayList<>(List.of(List.of(line.title())));
      line.entries().forEach(e -> entries.add(e.isEmpty() ? List.of(Grid.NONE) : e));
      row(entries, widths);
    }
  }

  private static int longest(Grid part, int cell) {
    int longest = Wrapping.width(part.heads().get(cell));
    for (Grid.Line line : part.lines()) {
      for (String text : line.entries().get(cell)) {
        longest = Math.max(longest, Wrapping.width(text));
      }
    }
    return longest;
  }

  /** One row of the table; it takes as many lines as its tallest entry. */
  private void row(List<List<String>> entries, List<Integer> widths) throws IOException {
    List<List<String>> wrapped = new ArrayList<>();
    int tallest = 0;
    for (int i = 0; i < entries.size(); i++) {
      List<String> lines = new ArrayList<>();
      for (String text : entries.get(i)) {
        lines.addAll(Wrapping.wrapHanging(text, widths.get(i)));
      }
      wrapped.add(lines);
      tallest = Math.max(tallest, lines.size());
    }
    for (int n = 0; n < tallest; n++) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < wrapped.size(); i++) {
        String text = n < wrapped.get(i).size() ? wrapped.get(i).get(n) : "";
        line.append(i == 0 ? "" : GAP).append(text);
        line.append(" ".repeat(Math.max(0, widths.get(i) - Wrapping.width(text))));
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
  }
}
