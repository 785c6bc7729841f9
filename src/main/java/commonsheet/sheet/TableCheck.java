package commonsheet.sheet;

import java.util.List;

/** Tells tables from frames, boxes, drawings and the grids of charts. */
final class TableCheck {
  /** Least share of cells that hold words; grids of charts hold a legend or nothing. */
  private static final double LEAST_FILLED = 0.25;

  /** A grid that curves run through must be filled more than this to be a table all the same. */
  private static final double FILLED_DESPITE_CURVES = 0.6;

  private static final int LEAST_ROWS_DESPITE_CURVES = 3;

  /** A curve that covers this share of the grid's width or height runs through it. */
  private static final double RUNS_THROUGH = 0.3;

  /** Larger curves are a page's decoration, in points. */
  private static final double LARGEST_CHART = 400;

  /** Most words, as a share, that may lie across a border. */
  private static final double ACROSS_BORDERS = 0.25;

  private TableCheck() {}

  static boolean isTable(Table table, List<Box> curves) {
    List<Cell> filled = table.cells().stream().filter(c -> !c.isEmpty()).toList();
    if (table.columns() < 2 || filled.size() < 2) {
      return false;
    }
    double share = (double) filled.size() / table.cells().size();
    boolean charted =
        curves.stream().anyMatch(c -> runsThrough(c, table.box()))
            && (share < FILLED_DESPITE_CURVES || table.rows() < LEAST_ROWS_DESPITE_CURVES);
    if (table.rows() == 1 && filled.stream().allMatch(c -> c.text().length() <= 2)) {
      return false;
    }
    return share >= LEAST_FILLED && !charted && acrossBorders(filled) <= ACROSS_BORDERS;
  }

  private static boolean runsThrough(Box curve, Box table) {
    double width = Math.min(curve.right(), table.right()) - Math.max(curve.x(), table.x());
    double height = Math.min(curve.bottom(), table.bottom()) - Math.max(curve.y(), table.y());
    return width > 0
        && height > 0
        && (width > RUNS_THROUGH * table.width() || height > RUNS_THROUGH * table.height())
        && curve.width() <= LARGEST_CHART
        && curve.height() <= LARGEST_CHART;
  }

  private static double acrossBorders(List<Cell> filled) {
    int words = 0;
    int across = 0;
    for (Cell cell : filled) {
      for (Line line : cell.lines()) {
        for (Word word : line.words()) {
          words++;
          double over =
              Math.max(cell.box().x() - word.box().x(), word.box().right() - cell.box().right());
          across += over > word.size() / 2 ? 1 : 0;
        }
      }
    }
    return words == 0 ? 1 : (double) across / words;
  }
}
