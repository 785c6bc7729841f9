package commonsheet.sheet;

import java.util.List;
import java.util.Optional;

/**
 * A table on a page.
 *
 * @param ruled whether its cells come from drawn lines; otherwise from the alignment of words
 * @param cells every cell once, by row and column; merged cells span
 */
public record Table(Box box, boolean ruled, int rows, int columns, List<Cell> cells) {
  public Table {
    cells = List.copyOf(cells);
  }

  /** The cell that covers a place of the grid, merged cells included. */
  public Optional<Cell> at(int row, int column) {
    return cells.stream()
        .filter(
            c ->
                row >= c.row()
                    && row < c.row() + c.rows()
                    && column >= c.column()
                    && column < c.column() + c.columns())
        .findFirst();
  }
}
