package commonsheet.compare.log;

import java.util.ArrayList;
import java.util.List;

/**
 * A log in pieces of ten seconds, each counted with its mean current: what a sensor and a propeller
 * do within them is of no account to what a cell delivers, and the highest is one that is held.
 *
 * @param all in the order of time
 */
record Pieces(List<Piece> all) {
  /** In s; also the window of the peak that is asked of a cell. */
  static final double LENGTH = 10;

  private static final double SECONDS_PER_HOUR = 3600;

  /**
   * A piece.
   *
   * @param seconds its length
   * @param current its mean, in A, positive for a discharge
   */
  record Piece(double seconds, double current) {
    /** In A.h. */
    double charge() {
      return seconds * current / SECONDS_PER_HOUR;
    }
  }

  static Pieces of(List<Run> runs) {
    List<Piece> pieces = new ArrayList<>();
    for (Run run : runs) {
      Run.Cursor cursor = run.cursor();
      double before = 0;
      double start = run.start();
      for (int n = 1; start < run.end(); n++) {
        double end = Math.min(run.end(), run.start() + n * LENGTH);
        double charge = cursor.charge(end);
        if (end > start) {
          pieces.add(new Piece(end - start, (charge - before) * SECONDS_PER_HOUR / (end - start)));
        }
        before = charge;
        start = end;
      }
    }
    return new Pieces(pieces);
  }

  double seconds() {
    return all.stream().mapToDouble(Piece::seconds).sum();
  }

  /** In A.h, what came back taken off. */
  double charge() {
    return all.stream().mapToDouble(Piece::charge).sum();
  }

  /** Those whose mean is above a current. */
  Pieces above(double current) {
    return new Pieces(all.stream().filter(p -> p.current() > current).toList());
  }
}
