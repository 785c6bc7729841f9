package commonsheet.sheet;

import java.util.ArrayList;
import java.util.List;
import technology.tabula.extractors.SpreadsheetExtractionAlgorithm;

/** Finds the cells that connected rulings enclose. */
final class CellFinder {
  /** Share of an edge that must be drawn for it to divide two places of the grid. */
  private static final double DRAWN = 0.6;

  private CellFinder() {}

  /**
   * The cells of connected rulings: those Tabula finds, where four drawn borders meet, and those of
   * which a border is open at the side of the table or a corner falls short.
   */
  static List<Box> cells(Rulings rulings) {
    Rulings closed = closeSides(rulings);
    List<Box> cells = new ArrayList<>();
    SpreadsheetExtractionAlgorithm.findCells(tabula(closed.level()), tabula(closed.upright()))
        .forEach(c -> cells.add(new Box(c.getMinX(), c.getMinY(), c.getWidth(), c.getHeight())));
    if (cells.isEmpty()) {
      return cells;
    }
    cells.addAll(missing(cells, closed));
    return cells;
  }

  private static List<technology.tabula.Ruling> tabula(List<Ruling> rulings) {
    List<technology.tabula.Ruling> out = new ArrayList<>();
    for (Ruling r : rulings) {
      Box b = r.box();
      out.add(
          new technology.tabula.Ruling(
              (float) b.y(), (float) b.x(), (float) b.width(), (float) b.height()));
    }
    return out;
  }

  /** Draws the sides a table leaves open where at least two of its lines end. */
  private static Rulings closeSides(Rulings rulings) {
    List<Ruling> level = new ArrayList<>(rulings.level());
    List<Ruling> upright = new ArrayList<>(rulings.upright());
    closeSide(level, upright, true);
    closeSide(level, upright, false);
    closeSide(upright, level, true);
    closeSide(upright, level, false);
    return Rulings.merged(concat(level, upright));
  }

  private static void closeSide(List<Ruling> lines, List<Ruling> sides, boolean start) {
    double edge =
        start
            ? lines.stream().mapToDouble(Ruling::from).min().orElse(0)
            : lines.stream().mapToDouble(Ruling::to).max().orElse(0);
    List<Ruling> ending =
        lines.stream()
            .filter(r -> Math.abs((start ? r.from() : r.to()) - edge) <= Rulings.MISS)
            .toList();
    boolean drawn = sides.stream().anyMatch(s -> Math.abs(s.at() - edge) <= Rulings.MISS);
    if (ending.size() >= 2 && !drawn) {
      double from = ending.stream().mapToDouble(Ruling::at).min().orElseThrow();
      double to = ending.stream().mapToDouble(Ruling::at).max().orElseThrow();
      sides.add(new Ruling(!lines.get(0).level(), edge, from, to));
    }
  }

  private static List<Ruling> concat(List<Ruling> a, List<Ruling> b) {
    List<Ruling> all = new ArrayList<>(a);
    all.addAll(b);
    return all;
  }

  /**
   * Places of the grid no cell covers, joined where no line divides them, unless they lie outside.
   */
  private static List<Box> missing(List<Box> cells, Rulings rulings) {
    CellGrid grid = new CellGrid(cells);
    boolean[][] taken = new boolean[grid.rows()][grid.columns()];
    for (CellGrid.Place p : grid.places()) {
      for (int r = p.row(); r < p.row() + p.rows(); r++) {
        for (int c = p.column(); c < p.column() + p.columns(); c++) {
          taken[r][c] = true;
        }
      }
    }
    List<Box> found = new ArrayList<>();
    for (int r = 0; r < grid.rows(); r++) {
      for (int c = 0; c < grid.columns(); c++) {
        if (!taken[r][c]) {
          Region region = new Region(grid, rulings, taken);
          region.grow(r, c);
          found.addAll(region.cells());
        }
      }
    }
    return found;
  }

  /** Neighbouring places without a drawn line between them. */
  private static final class Region {
    private final CellGrid grid;
    private final Rulings rulings;
    private final boolean[][] taken;
    private final List<int[]> places = new ArrayList<>();
    private boolean openSideways;
    private boolean openAbove;
    private boolean openBelow;

    Region(CellGrid grid, Rulings rulings, boolean[][] taken) {
      this.grid = grid;
      this.rulings = rulings;
      this.taken = taken;
    }

    void grow(int row, int column) {
      List<int[]> todo = new ArrayList<>();
      todo.add(new int[] {row, column});
      taken[row][column] = true;
      while (!todo.isEmpty()) {
        int[] at = todo.remove(todo.size() - 1);
        places.add(at);
        Box box = grid.box(at[0], at[1], 1, 1);
        visit(at[0], at[1] - 1, rulings.upright(), box.x(), box.y(), box.bottom(), todo);
        visit(at[0], at[1] + 1, rulings.upright(), box.right(), box.y(), box.bottom(), todo);
        visit(at[0] - 1, at[1], rulings.level(), box.y(), box.x(), box.right(), todo);
        visit(at[0] + 1, at[1], rulings.level(), box.bottom(), box.x(), box.right(), todo);
      }
    }

    private void visit(
        int row,
        int column,
        List<Ruling> lines,
        double at,
        double from,
        double to,
        List<int[]> todo) {
      if (isDrawn(lines, at, from, to)) {
        return;
      }
      if (row < 0) {
        openAbove = true;
      } else if (row >= grid.rows()) {
        openBelow = true;
      } else if (column < 0 || column >= grid.columns()) {
        openSideways = true;
      } else if (!taken[row][column]) {
        taken[row][column] = true;
        todo.add(new int[] {row, column});
      }
    }

    private static boolean isDrawn(List<Ruling> lines, double at, double from, double to) {
      double drawn = 0;
      for (Ruling line : lines) {
        if (Math.abs(line.at() - at) <= Rulings.MISS) {
          drawn += Math.max(0, Math.min(to, line.to()) - Math.max(from, line.from()));
        }
      }
      return drawn >= DRAWN * (to - from);
    }

    /**
     * One cell if the region is a rectangle, otherwise one for each of its places; none if it lies
     * outside the table. A cell that goes on at the next page is open at its lower or upper end
     * only.
     */
    List<Box> cells() {
      boolean outside = openSideways || (openAbove && openBelow);
      int top = places.stream().mapToInt(p -> p[0]).min().orElseThrow();
      int bottom = places.stream().mapToInt(p -> p[0]).max().orElseThrow();
      int left = places.stream().mapToInt(p -> p[1]).min().orElseThrow();
      int right = places.stream().mapToInt(p -> p[1]).max().orElseThrow();
      if ((bottom - top + 1) * (right - left + 1) == places.size()) {
        Box whole = grid.box(top, left, bottom - top + 1, right - left + 1);
        return outside ? List.of() : List.of(whole);
      }
      if (outside || openAbove || openBelow) {
        return List.of();
      }
      return places.stream().map(p -> grid.box(p[0], p[1], 1, 1)).toList();
    }
  }
}
