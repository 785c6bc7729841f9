package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** Finds the tables whose cells are drawn. */
final class RuledTables {
  /** Pairs of crossing lines beyond which connected lines are a drawing, not a table. */
  private static final long MOST_PAIRS = 40_000;

  /** A cell this share of the page's height and width is a frame around the page's content. */
  private static final double FRAME_HEIGHT = 0.45;

  private static final double FRAME_WIDTH = 0.6;

  private final double pageWidth;
  private final double pageHeight;
  private final List<Word> words;
  private final List<Box> curves;

  /**
   * Prepares for a page.
   *
   * @param words its upright words
   * @param curves boxes of slanted and curved strokes, which tell charts from tables
   */
  RuledTables(double pageWidth, double pageHeight, List<Word> words, List<Box> curves) {
    this.pageWidth = pageWidth;
    this.pageHeight = pageHeight;
    this.words = words;
    this.curves = curves;
  }

  /** The tables of merged rulings, smaller ones first taking the words within them. */
  List<Table> find(Rulings rulings) {
    List<List<Box>> groups = new ArrayList<>();
    for (Rulings connected : rulings.connected()) {
      if (connected.level().size() + connected.upright().size() >= 4
          && !connected.level().isEmpty()
          && !connected.upright().isEmpty()
          && connected.pairs() <= MOST_PAIRS) {
        List<Box> cells = new ArrayList<>(CellFinder.cells(connected));
        cells.removeIf(this::isFrame);
        groups.addAll(adjacent(cells));
      }
    }
    groups.sort((a, b) -> Double.compare(area(Box.around(a)), area(Box.around(b))));
    List<Word> free = new ArrayList<>(words);
    List<Table> tables = new ArrayList<>();
    for (List<Box> cells : groups) {
      Table table = table(cells, free);
      if (TableCheck.isTable(table, curves)) {
        tables.add(table);
        free.removeAll(wordsOf(table));
      }
    }
    tables.sort(
        (a, b) ->
            a.box().sharedHeight(b.box()) > 0.5
                ? Double.compare(a.box().x(), b.box().x())
                : Double.compare(a.box().y(), b.box().y()));
    return tables;
  }

  /** By identity: comparing every word with every other is slow, and each is there once. */
  private static Set<Word> wordsOf(Table table) {
    Set<Word> words = Collections.newSetFromMap(new IdentityHashMap<>());
    table.cells().forEach(c -> c.lines().forEach(l -> words.addAll(l.words())));
    return words;
  }

  private boolean isFrame(Box cell) {
    return cell.height() > FRAME_HEIGHT * pageHeight && cell.width() > FRAME_WIDTH * pageWidth;
  }

  private static double area(Box box) {
    return box.width() * box.height();
  }

  /** Cells by tables: those that share a border hang together. */
  private static List<List<Box>> adjacent(List<Box> cells) {
    List<List<Box>> groups = new ArrayList<>();
    for (Box cell : cells) {
      List<Box> group = new ArrayList<>(List.of(cell));
      groups.removeIf(
          other -> {
            boolean touches = other.stream().anyMatch(o -> shareBorder(o, cell));
            if (touches) {
              group.addAll(other);
            }
            return touches;
          });
      groups.add(group);
    }
    return groups;
  }

  private static boolean shareBorder(Box a, Box b) {
    boolean beside =
        Math.abs(a.right() - b.x()) <= Rulings.MISS || Math.abs(b.right() - a.x()) <= Rulings.MISS;
    boolean stacked =
        Math.abs(a.bottom() - b.y()) <= Rulings.MISS
            || Math.abs(b.bottom() - a.y()) <= Rulings.MISS;
    return (beside && a.sharedHeight(b) > 0.5) || (stacked && a.sharedWidth(b) > 0.5);
  }

  private static Table table(List<Box> cells, List<Word> free) {
    CellGrid grid = new CellGrid(cells);
    List<List<Word>> held = new ArrayList<>();
    grid.places().forEach(p -> held.add(new ArrayList<>()));
    for (Word word : free) {
      for (int i = 0; i < held.size(); i++) {
        if (grid.places().get(i).box().contains(word.box().centreX(), word.box().centreY())) {
          held.get(i).add(word);
          break;
        }
      }
    }
    List<Cell> out = new ArrayList<>();
    for (int i = 0; i < held.size(); i++) {
      CellGrid.Place p = grid.places().get(i);
      out.add(
          new Cell(
              p.row(), p.column(), p.rows(), p.columns(), p.box(), LineBuilder.lines(held.get(i))));
    }
    return new Table(Box.around(cells), true, grid.rows(), grid.columns(), out);
  }
}
