package commonsheet.export;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** Writes a comparison as tables of GitHub Flavored Markdown, four cells to a table. */
public final class MarkdownComparison {
  private static final int CELLS_PER_TABLE = 4;

  private MarkdownComparison() {}

  /** Writes the tables, the legend and the caution; lines end with LF. */
  public static void write(ComparisonTable table, Appendable out) throws IOException {
    Grid grid = Grid.of(table);
    if (table.rows().isEmpty()) {
      out.append(Grid.EMPTY).append("\n\n");
    }
    for (Grid part : grid.parts(CELLS_PER_TABLE)) {
      List<String> heads = new ArrayList<>(List.of(""));
      part.heads().forEach(head -> heads.add(MarkdownText.of(head)));
      row(heads, out);
      row(Collections.nCopies(heads.size(), "---"), out);
      for (Grid.Line line : part.lines()) {
        List<String> entries = new ArrayList<>(List.of(MarkdownText.of(line.title())));
        line.entries().forEach(entry -> entries.add(entry(entry)));
        row(entries, out);
      }
      out.append('\n');
    }
    out.append(MarkdownText.of(Grid.LEGEND))
        .append("\n\n> ")
        .append(MarkdownText.of(Caution.TEXT))
        .append('\n');
  }

  private static void row(List<String> entries, Appendable out) throws IOException {
    out.append(entries.stream().collect(Collectors.joining(" | ", "| ", " |"))).append('\n');
  }

  private static String entry(List<String> texts) {
    return texts.isEmpty()
        ? Grid.NONE
        : texts.stream().map(MarkdownText::of).collect(Collectors.joining("<br>"));
  }
}
