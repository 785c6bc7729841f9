package commonsheet.sheet;

import java.util.ArrayList;
import java.util.List;

/** Finds the rulings of a page that is a picture: long thin runs of ink along its axes. */
final class PictureRulings {
  /** Shortest run in points: longer than the strokes of letters up to twice the common size. */
  private static final double SHORTEST = 14;

  /** Thickest ruling in points. */
  private static final double THICKEST = 3;

  /** Gaps in a run that a scanner leaves, in points. */
  private static final double GAP = 1;

  /** Share of its length a run has in common with the row before to go on with it. */
  private static final double GOES_ON = 0.5;

  private final InkMask ink;
  private final boolean level;
  private final double points;
  private final List<Ruling> found = new ArrayList<>();

  private PictureRulings(InkMask ink, boolean level, double points) {
    this.ink = ink;
    this.level = level;
    this.points = points;
  }

  /**
   * The rulings, on the page.
   *
   * @param points side of a pixel in points
   */
  static Rulings of(InkMask ink, double points) {
    List<Ruling> pieces = new ArrayList<>();
    pieces.addAll(new PictureRulings(ink, true, points).find());
    pieces.addAll(new PictureRulings(ink, false, points).find());
    return Rulings.merged(pieces);
  }

  /** Runs on neighbouring rows (or columns), which together are one stroke. */
  private static final class Stroke {
    private final int first;
    private int last;
    private int from;
    private int to;
    private int lastFrom;
    private int lastTo;

    private Stroke(int line, int from, int to) {
      this.first = line;
      add(line, from, to);
      this.from = from;
      this.to = to;
    }

    private void add(int line, int start, int end) {
      last = line;
      lastFrom = start;
      lastTo = end;
      from = Math.min(from, start);
      to = Math.max(to, end);
    }

    private boolean goesOn(int line, int start, int end) {
      int shared = Math.min(lastTo, end) - Math.max(lastFrom, start);
      return last == line - 1 && shared >= GOES_ON * Math.min(lastTo - lastFrom, end - start);
    }
  }

  private List<Ruling> find() {
    int lines = level ? ink.height() : ink.width();
    List<Stroke> open = new ArrayList<>();
    for (int line = 0; line < lines; line++) {
      extend(open, line);
      int now = line;
      open.removeIf(stroke -> stroke.last < now && keep(stroke));
    }
    open.forEach(this::keep);
    return found;
  }

  private void extend(List<Stroke> open, int line) {
    int length = level ? ink.width() : ink.height();
    int from = -1;
    int last = -1;
    for (int i = 0; i <= length; i++) {
      boolean mark = i < length && (level ? ink.at(i, line) : ink.at(line, i));
      if (mark) {
        from = from < 0 ? i : from;
        last = i;
      } else if (from >= 0 && (i == length || (i - last) * points > GAP)) {
        if ((last + 1 - from) * points >= SHORTEST) {
          add(open, line, from, last + 1);
        }
        from = -1;
      }
    }
  }

  private static void add(List<Stroke> open, int line, int from, int to) {
    for (Stroke stroke : open) {
      if (stroke.goesOn(line, from, to)) {
        stroke.add(line, from, to);
        return;
      }
    }
    open.add(new Stroke(line, from, to));
  }

  /** Keeps a finished stroke if it is thin. */
  private boolean keep(Stroke stroke) {
    double thickness = (stroke.last + 1 - stroke.first) * points;
    if (thickness <= THICKEST) {
      double at = (stroke.first + stroke.last + 1) / 2.0 * points;
      found.add(new Ruling(level, at, stroke.from * points, stroke.to * points));
    }
    return true;
  }
}
