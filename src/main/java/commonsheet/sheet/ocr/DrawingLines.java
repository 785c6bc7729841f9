package commonsheet.sheet.ocr;

import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Completes the lines of text found in a drawing. The network that finds lines was trained on
 * words: in charts it cuts off ends ("Voltage / V" without the V), parts a title on its side in two
 * and passes over lone labels. What is missing is told by the letters themselves: marks of their
 * size, on their line, close by.
 */
final class DrawingLines {
  /** Largest letter, in heights of a line as the network sees it, which is higher than the ink. */
  private static final double LARGEST = 1.5;

  /** A box this much higher than wide holds a line on its side. */
  private static final double ON_SIDE = 2;

  /**
   * Parts of one title on its side share so much of their width and stand this close, in widths.
   */
  private static final double IN_LINE = 0.6;

  private static final double APART = 0.7;

  /** Widest of two parts of a title against the other one. */
  private static final double ALIKE = 1.7;

  /** A line that rises by less than this share of its height is level. */
  private static final double TILTED = 0.4;

  /** Letters that a lone label has at least, since a lone mark may be anything. */
  private static final int FEWEST = 2;

  /** Room above and below the ink of a label, in its height. */
  private static final double ROOM = 0.2;

  private final List<Box> marks;

  private DrawingLines(List<Box> marks) {
    this.marks = marks;
  }

  /** The lines with their ends, those on their side joined, and those that were passed over. */
  static List<TurnedBox> completed(Pixels picture, List<TurnedBox> found) {
    if (found.isEmpty()) {
      return found;
    }
    double highest =
        found.stream().mapToDouble(b -> Math.min(b.length(), b.height())).max().orElse(0);
    List<Box> marks = LetterMarks.of(picture, LARGEST * highest);
    DrawingLines level = new DrawingLines(marks);
    DrawingLines turned = new DrawingLines(marks.stream().map(DrawingLines::turned).toList());
    List<Box> all = found.stream().map(TurnedBox::around).toList();
    List<Box> allTurned = all.stream().map(DrawingLines::turned).toList();
    List<TurnedBox> aslant = new ArrayList<>();
    List<Box> lines = new ArrayList<>();
    List<Box> upright = new ArrayList<>();
    for (TurnedBox box : found) {
      Box around = box.around();
      if (Math.abs(Math.sin(box.angle())) * box.length() > TILTED * box.height()) {
        aslant.add(box);
      } else if (around.height() >= ON_SIDE * around.width()) {
        upright.add(turned(turned.extended(turned(around), allTurned)));
      } else {
        lines.add(level.extended(around, all));
      }
    }
    join(upright, lines);
    lines.addAll(upright);
    lines.addAll(level.passedOver(lines));
    List<TurnedBox> completed = new ArrayList<>(aslant);
    for (Box line : lines) {
      completed.add(TurnedBox.level(line.x(), line.y(), line.width(), line.height()));
    }
    return completed;
  }

  /** Mirrored about the diagonal, so that what stands on its side lies level. */
  private static Box turned(Box box) {
    return new Box(box.y(), box.x(), box.height(), box.width());
  }

  /** A line with the letters that go on at its ends and are in no other line. */
  private Box extended(Box line, List<Box> others) {
    LetterRow row = LetterRow.of(line, marks);
    if (row == null) {
      return line;
    }
    List<Box> free =
        marks.stream()
            .filter(
                mark ->
                    line.contains(mark.centreX(), mark.centreY())
                        || others.stream()
                            .noneMatch(o -> o.contains(mark.centreX(), mark.centreY())))
            .toList();
    return row.extended(free).box();
  }

  /** Joins the parts of titles on their side; a part of few letters looks like a level line. */
  private static void join(List<Box> upright, List<Box> lines) {
    for (int i = 0; i < upright.size(); i++) {
      for (boolean again = true; again; ) {
        Box title = upright.get(i);
        Box part = part(title, upright, i);
        if (part != null) {
          upright.remove(part);
        } else {
          part = part(title, lines, -1);
          lines.remove(part);
        }
        again = part != null;
        i = upright.indexOf(title);
        if (again) {
          upright.set(i, title.union(part));
        }
      }
    }
  }

  private static Box part(Box title, List<Box> others, int own) {
    for (int i = 0; i < others.size(); i++) {
      Box other = others.get(i);
      double gap = Math.max(other.y() - title.bottom(), title.y() - other.bottom());
      if (i != own
          && other.sharedWidth(title) > IN_LINE
          && gap < APART * title.width()
          && other.width() < ALIKE * title.width()
          && title.width() < ALIKE * other.width()) {
        return other;
      }
    }
    return null;
  }

  /** Rows of letters that no line covers. */
  private List<Box> passedOver(List<Box> lines) {
    double height = usualHeight(lines);
    List<Box> free = new ArrayList<>();
    for (Box mark : marks) {
      if (height > 0
          && LetterRow.isSized(mark, height)
          && lines.stream().noneMatch(l -> l.contains(mark.centreX(), mark.centreY()))) {
        free.add(mark);
      }
    }
    free.sort(Comparator.comparingDouble(Box::x));
    List<Box> rows = new ArrayList<>();
    while (!free.isEmpty()) {
      Box row = free.get(0);
      LetterRow grown = new LetterRow(row, row.y(), row.bottom()).extended(free);
      List<Box> letters =
          free.stream().filter(m -> grown.box().contains(m.centreX(), m.centreY())).toList();
      free.removeAll(letters);
      free.remove(row);
      if (letters.size() >= FEWEST) {
        Box ink = Box.around(letters);
        double room = ROOM * ink.height();
        rows.add(
            new Box(
                ink.x() - room, ink.y() - room, ink.width() + 2 * room, ink.height() + 2 * room));
      }
    }
    return rows;
  }

  private double usualHeight(List<Box> lines) {
    double[] heights =
        lines.stream()
            .map(line -> LetterRow.of(line, marks))
            .filter(row -> row != null)
            .mapToDouble(LetterRow::height)
            .sorted()
            .toArray();
    return heights.length == 0 ? 0 : heights[heights.length / 2];
  }
}
