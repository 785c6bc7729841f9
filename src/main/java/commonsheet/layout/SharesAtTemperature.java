package commonsheet.layout;

import commonsheet.quantity.Dimension;
import commonsheet.sheet.Cell;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * In a table of storage, the temperature beside or above a share of the capacity is that of its
 * storage: "1 month | −20 to 50 °C | ≥ 95 %".
 */
final class SharesAtTemperature {
  private final Grid grid;
  private final Map<Integer, Passage> byColumn = new HashMap<>();

  SharesAtTemperature(Grid grid) {
    this.grid = grid;
  }

  /**
   * The heading of a stated column, with the temperatures of the row above for a share; rows are
   * given top to bottom.
   */
  Passage under(Cell cell, Passage heading) {
    if (isOf(cell, Dimension.TEMPERATURE)) {
      byColumn.put(cell.column(), grid.passage(cell));
    }
    Passage above = byColumn.get(cell.column());
    return above == null || !isOf(cell, Dimension.RATIO) ? heading : heading.then(above);
  }

  /** The conditions of a cell, with the temperatures in the same row for a share. */
  Passage inRow(Cell cell, List<Cell> row, Passage conditions) {
    Passage all = conditions;
    for (Cell other : row) {
      if (isOf(cell, Dimension.RATIO) && isOf(other, Dimension.TEMPERATURE)) {
        all = all.then(grid.passage(other));
      }
    }
    return all;
  }

  private boolean isOf(Cell cell, Dimension dimension) {
    return grid.dimensions(cell).contains(dimension);
  }
}
