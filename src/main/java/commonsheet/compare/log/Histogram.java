package commonsheet.compare.log;

import commonsheet.compare.Load;
import java.util.ArrayList;
import java.util.List;

/** How long which current was drawn, in bins of one width. */
final class Histogram {
  /** More bins tell a reader no more. */
  private static final int MOST_BINS = 15;

  private static final double[] ROUND = {1, 2, 2.5, 5, 10};

  private Histogram() {}

  /**
   * A bin.
   *
   * @param low end, in A
   * @param high end, in A
   * @param share what was drawn within: the mean current, and its share of the time
   */
  record Bin(double low, double high, Load.Share share) {}

  /** The bins in which anything was drawn, by ascending current. */
  static List<Bin> of(Pieces pieces) {
    double highest = pieces.all().stream().mapToDouble(Pieces.Piece::current).max().orElseThrow();
    double width = roundAbove(highest / MOST_BINS);
    double[] seconds = new double[MOST_BINS + 1];
    double[] weighted = new double[MOST_BINS + 1];
    for (Pieces.Piece piece : pieces.all()) {
      int bin = Math.min(MOST_BINS, (int) (piece.current() / width));
      seconds[bin] += piece.seconds();
      weighted[bin] += piece.seconds() * piece.current();
    }
    double whole = pieces.seconds();
    List<Bin> bins = new ArrayList<>();
    for (int i = 0; i <= MOST_BINS; i++) {
      if (seconds[i] > 0) {
        Load.Share share = new Load.Share(weighted[i] / seconds[i], seconds[i] / whole);
        bins.add(new Bin(i * width, (i + 1) * width, share));
      }
    }
    return bins;
  }

  /** The next number of the kind 1, 2, 2.5 or 5 times a power of ten. */
  private static double roundAbove(double number) {
    double power = Math.pow(10, Math.floor(Math.log10(number)));
    for (double round : ROUND) {
      if (round * power >= number) {
        return round * power;
      }
    }
    return 10 * power;
  }
}
