package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds long straight lines along the axes: frames, axes, grid lines, rules of tables. A pixel
 * belongs to a line if it differs in lightness from what lies on both sides of it.
 */
final class LineRuns {
  /** How far across a line its surroundings are looked at, in pixels: thin, middling, thick. */
  private static final int[] REACH = {2, 4, 8};

  /** Least difference in lightness: light grey grids differ by some 35, JPEG noise by some 6. */
  private static final int CONTRAST = 10;

  /** Pixels a run may miss, as where noise or a crossing line interrupts it. */
  private static final int GAP = 2;

  /** Share of a run that must be marked: rows of small letters have wider gaps. */
  private static final double FILLED = 0.93;

  /** Thickest line. */
  private static final int THICKEST = 9;

  /** Pixels missing in a line, as a share of its length, where something is drawn over it. */
  private static final double BRIDGED = 0.06;

  private final Shade shade;
  private final int shortest;
  private final List<Growing> open = new ArrayList<>();
  private final List<Growing> closed = new ArrayList<>();

  private LineRuns(Shade shade, int shortest) {
    this.shade = shade;
    this.shortest = shortest;
  }

  /** The lines that lie level, each at least so long. */
  static List<Segment> level(Shade shade, int shortest) {
    return new LineRuns(shade, shortest).find();
  }

  private List<Segment> find() {
    boolean[] ridge = new boolean[shade.width];
    for (int y = 1; y < shade.height - 1; y++) {
      mark(y, ridge);
      scan(y, ridge);
    }
    closed.addAll(open);
    List<Segment> lines = new ArrayList<>();
    for (Growing line : closed) {
      Segment segment = line.segment();
      if (segment.thickness() <= THICKEST) {
        lines.add(segment);
      }
    }
    return joined(lines);
  }

  private void mark(int y, boolean[] ridge) {
    int[] light = shade.light;
    int width = shade.width;
    for (int x = 0; x < width; x++) {
      int here = light[y * width + x];
      boolean found = false;
      for (int k = 0; k < REACH.length && !found; k++) {
        int above = y - REACH[k] < 0 ? 255 : light[(y - REACH[k]) * width + x];
        int below = y + REACH[k] >= shade.height ? 255 : light[(y + REACH[k]) * width + x];
        found =
            above - here > CONTRAST && below - here > CONTRAST
                || here - above > CONTRAST && here - below > CONTRAST;
      }
      ridge[x] = found;
    }
  }

  private void scan(int y, boolean[] ridge) {
    int start = -1;
    int last = -1;
    int marked = 0;
    for (int x = 0; x <= ridge.length; x++) {
      boolean on = x < ridge.length && ridge[x];
      if (on) {
        if (start < 0) {
          start = x;
          marked = 0;
        }
        last = x;
        marked++;
      } else if (start >= 0 && (x - last > GAP || x == ridge.length)) {
        int length = last - start + 1;
        if (length >= shortest && marked >= FILLED * length) {
          add(y, start, last);
        }
        start = -1;
      }
    }
    for (int i = open.size() - 1; i >= 0; i--) {
      if (open.get(i).lastRow < y) {
        closed.add(open.remove(i));
      }
    }
  }

  private void add(int y, int from, int to) {
    for (Growing line : open) {
      int shared = Math.min(line.to, to) - Math.max(line.from, from);
      if (line.lastRow >= y - 1 && shared > 0.5 * Math.min(line.to - line.from, to - from)) {
        line.add(y, from, to);
        return;
      }
    }
    Growing line = new Growing(from, to);
    line.add(y, from, to);
    open.add(line);
  }

  /** Joins lines that continue each other over a short gap. */
  private static List<Segment> joined(List<Segment> lines) {
    List<Segment> sorted = new ArrayList<>(lines);
    sorted.sort(Comparator.comparingDouble(Segment::from));
    List<Segment> out = new ArrayList<>();
    for (Segment line : sorted) {
      Segment before = null;
      for (Segment other : out) {
        double gap = line.from() - other.to();
        double most = Math.max(6, BRIDGED * Math.max(line.length(), other.length()));
        if (Math.abs(other.at() - line.at()) <= 1.2 && gap <= most) {
          before = other;
        }
      }
      if (before == null) {
        out.add(line);
      } else {
        out.remove(before);
        out.add(join(before, line));
      }
    }
    return out;
  }

  private static Segment join(Segment a, Segment b) {
    double total = a.length() + b.length();
    double at = (a.at() * a.length() + b.at() * b.length()) / total;
    double thickness = (a.thickness() * a.length() + b.thickness() * b.length()) / total;
    return new Segment(at, Math.min(a.from(), b.from()), Math.max(a.to(), b.to()), thickness);
  }

  /** A line seen in some rows already. */
  private static final class Growing {
    private int from;
    private int to;
    private int lastRow;
    private double pixels;
    private double rows;

    Growing(int from, int to) {
      this.from = from;
      this.to = to;
    }

    void add(int y, int runFrom, int runTo) {
      from = Math.min(from, runFrom);
      to = Math.max(to, runTo);
      int length = runTo - runFrom + 1;
      pixels += length;
      rows += (double) length * y;
      lastRow = y;
    }

    Segment segment() {
      return new Segment(rows / pixels, from, to, pixels / (to - from + 1));
    }
  }
}
