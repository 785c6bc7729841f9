package commonsheet.sheet;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A cell of a table.
 *
 * @param row first row, from 0
 * @param column first column, from 0
 * @param rows how many rows it spans (merged cells), at least 1
 * @param columns how many columns it spans, at least 1
 * @param box the cell's frame, or the box around its words where nothing is drawn
 * @param lines its words by lines, top to bottom; empty for an empty cell
 */
public record Cell(int row, int column, int rows, int columns, Box box, List<Line> lines) {
  public Cell {
    lines = List.copyOf(lines);
  }

  /** The lines joined by a line feed. */
  public String text() {
    return lines.stream().map(Line::text).collect(Collectors.joining("\n"));
  }

  public boolean isEmpty() {
    return lines.isEmpty();
  }
}
