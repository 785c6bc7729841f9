package commonsheet.layout;

import commonsheet.sheet.Box;
import commonsheet.sheet.Cell;
import commonsheet.sheet.Line;
import commonsheet.sheet.Page;
import commonsheet.sheet.Table;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;

/**
 * Mends what two lines alone cannot tell a finder of tables: two lines whose parts stand above each
 * other are a small table, and a label set level with the middle of a two-line value belongs to it.
 */
final class LevelLines {
  /** A gap wider than this many times the font size parts the cells of a line. */
  private static final double GAP = 0.95;

  /** Two lines with fewer parts than this are labels and values, not a table. */
  private static final int FEWEST_PARTS = 3;

  /**
   * Parts above each other differ by no more than this, in points, at the left edge or in the
   * middle.
   */
  private static final double ALIGNED = 14;

  private LevelLines() {}

  /** The page with its small tables as tables and its parted values joined. */
  static Page mended(Page page) {
    List<Line> lines = joined(page.lines().stream().flatMap(l -> pairs(l).stream()).toList());
    List<Line> left = new ArrayList<>();
    List<Table> tables = new ArrayList<>(page.tables());
    for (int i = 0; i < lines.size(); i++) {
      List<Line> upper = parts(lines.get(i));
      List<Line> lower = i + 1 < lines.size() ? parts(lines.get(i + 1)) : List.of();
      if (upper.size() >= FEWEST_PARTS
          && aligned(upper, lower)
          && isNext(lines.get(i), lines.get(i + 1))) {
        tables.add(table(upper, lower));
        i++;
      } else {
        left.add(lines.get(i));
      }
    }
    return new Page(
        page.number(),
        page.width(),
        page.height(),
        page.words(),
        left,
        tables,
        page.running(),
        page.kind());
  }

  /**
   * "Nominal capacity 2600 mAh Rated voltage 3.6 V": two labels with their values side by side are
   * two lines.
   */
  private static List<Line> pairs(Line line) {
    List<Line> parts = parts(line);
    if (parts.size() < 4 || parts.size() % 2 != 0) {
      return List.of(line);
    }
    List<Line> pairs = new ArrayList<>();
    for (int i = 0; i < parts.size(); i += 2) {
      if (hasDigit(parts.get(i)) || !hasWords(parts.get(i)) || !hasDigit(parts.get(i + 1))) {
        return List.of(line);
      }
      List<Word> words = new ArrayList<>(parts.get(i).words());
      words.addAll(parts.get(i + 1).words());
      pairs.add(new Line(words));
    }
    return pairs;
  }

  private static boolean hasDigit(Line line) {
    return line.text().chars().anyMatch(Character::isDigit);
  }

  private static boolean isNext(Line line, Line next) {
    double gap = next.box().y() - line.box().bottom();
    return gap > -1 && gap < 2.2 * line.box().height();
  }

  private static List<Line> parts(Line line) {
    List<Line> parts = new ArrayList<>();
    List<Word> part = new ArrayList<>();
    for (Word word : line.words()) {
      if (!part.isEmpty()) {
        Box last = part.get(part.size() - 1).box();
        if (word.box().x() - last.right() > GAP * Math.max(4, word.size())) {
          parts.add(new Line(part));
          part = new ArrayList<>();
        }
      }
      part.add(word);
    }
    parts.add(new Line(part));
    return parts;
  }

  private static boolean aligned(List<Line> upper, List<Line> lower) {
    if (upper.size() != lower.size() || !hasWords(upper.get(0)) || !hasWords(lower.get(0))) {
      return false;
    }
    for (int i = 0; i < upper.size(); i++) {
      Box a = upper.get(i).box();
      Box b = lower.get(i).box();
      if (Math.abs(a.x() - b.x()) > ALIGNED && Math.abs(a.centreX() - b.centreX()) > ALIGNED) {
        return false;
      }
    }
    return true;
  }

  private static boolean hasWords(Line line) {
    return line.text().chars().anyMatch(Character::isLetter);
  }

  private static Table table(List<Line> upper, List<Line> lower) {
    List<Cell> cells = new ArrayList<>();
    List<Box> boxes = new ArrayList<>();
    for (int i = 0; i < upper.size(); i++) {
      cells.add(new Cell(0, i, 1, 1, upper.get(i).box(), List.of(upper.get(i))));
      boxes.add(upper.get(i).box());
    }
    for (int i = 0; i < lower.size(); i++) {
      cells.add(new Cell(1, i, 1, 1, lower.get(i).box(), List.of(lower.get(i))));
      boxes.add(lower.get(i).box());
    }
    return new Table(Box.around(boxes), false, 2, upper.size(), cells);
  }

  // ---- a label beside two lines of value ----

  private static List<Line> joined(List<Line> lines) {
    List<Line> joined = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (i + 2 < lines.size()
          && isLabelBetween(lines.get(i), lines.get(i + 1), lines.get(i + 2))) {
        List<Word> words = new ArrayList<>(lines.get(i + 1).words());
        words.addAll(lines.get(i).words());
        joined.add(new Line(words));
        joined.add(lines.get(i + 2));
        i += 2;
      } else {
        joined.add(lines.get(i));
      }
    }
    return joined;
  }

  private static boolean isLabelBetween(Line above, Line label, Line below) {
    Box a = above.box();
    Box l = label.box();
    Box b = below.box();
    return Math.abs(a.x() - b.x()) < 3
        && a.x() - l.right() > 10
        && a.centreY() < l.centreY()
        && l.centreY() < b.centreY()
        && b.centreY() - a.centreY() < 2 * a.height()
        && label.text().chars().noneMatch(Character::isDigit);
  }
}
