package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Chooses the curves among the lines followed in a plot. */
final class Curves {
  /** Least extent across, as a share of the plot's width, of a coloured and of a grey curve. */
  private static final double LEAST_ACROSS = 0.12;

  private static final double LEAST_ACROSS_GREY = 0.25;

  /** Least share of a line that must be seen; dotted lines show a quarter. */
  private static final double LEAST_SEEN = 0.22;

  /** Most turning of a curve in all, in radians, and per pixel; letters turn at every stroke. */
  private static final double MOST_TURNING = 14;

  private static final double MOST_TURNING_PER_PIXEL = 0.07;

  /** How far a curve may run backwards, as a share of the plot's width. */
  private static final double MOST_BACKWARD = 0.06;

  private final Area area;

  Curves(Area area) {
    this.area = area;
  }

  /** A line that may be a curve, with the width of its ink. */
  record Candidate(Strand strand, double lineWidth, Layer layer) {
    Tone ink() {
      return layer.ink();
    }

    boolean grey() {
      return ink().isGrey();
    }
  }

  List<Candidate> among(List<Candidate> candidates) {
    List<Candidate> sorted = new ArrayList<>(candidates);
    sorted.removeIf(c -> !isLikely(c));
    sorted.sort(Comparator.comparingInt(c -> -c.strand().length()));
    List<Candidate> kept = new ArrayList<>();
    for (Candidate candidate : sorted) {
      if (kept.stream().noneMatch(k -> isEdgeOf(candidate, k))) {
        kept.add(candidate);
      }
    }
    return kept;
  }

  private boolean isLikely(Candidate candidate) {
    Strand strand = candidate.strand();
    if (strand.length() < 8) {
      return false;
    }
    Shape shape = new Shape(strand, candidate.lineWidth());
    double least = candidate.grey() ? LEAST_ACROSS_GREY : LEAST_ACROSS;
    if (strand.spanX() < least * area.width()
        || shape.seen() < LEAST_SEEN
        || shape.turning() > MOST_TURNING
        || shape.turning() > MOST_TURNING_PER_PIXEL * shape.arc() + 2
        || shape.backward() > MOST_BACKWARD * area.width()) {
      return false;
    }
    return !(candidate.grey() && strand.spanY() <= 4)
        && !Leaders.isLeader(strand, candidate.lineWidth(), area);
  }

  /** Whether a line runs along another, so that it is the blurred edge of that one's ink. */
  private static boolean isEdgeOf(Candidate candidate, Candidate other) {
    Strand edge = candidate.strand();
    Strand line = other.strand();
    double near = 0.8 * other.lineWidth() + 1.5;
    int beside = 0;
    int looked = 0;
    for (int i = 0; i < edge.length(); i += 3) {
      looked++;
      if (isNear(edge.x()[i], edge.y()[i], line, near)) {
        beside++;
      }
    }
    return beside > 0.75 * looked && edge.length() < 0.7 * line.length();
  }

  private static boolean isNear(double x, double y, Strand line, double near) {
    for (int k = 0; k < line.length(); k++) {
      if (Math.abs(line.x()[k] - x) <= near && Math.abs(line.y()[k] - y) <= near) {
        return true;
      }
    }
    return false;
  }
}
