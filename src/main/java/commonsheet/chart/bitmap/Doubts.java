package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says why a line that was followed may not be one curve. */
final class Doubts {
  /** Longest stretch of a curve that may be unseen without a word, as a share of the width. */
  private static final double UNSEEN = 0.06;

  /** How near another way on may come: 1 is as good as the one taken. */
  private static final double RIVAL = 0.75;

  /** Extent of a curve against the widest one below which it may be but a part. */
  private static final double PART = 0.5;

  private Doubts() {}

  static List<String> of(Curves.Candidate curve, List<Curves.Candidate> all, Area plot) {
    Strand strand = curve.strand();
    List<String> doubts = new ArrayList<>();
    double unseen = new Shape(strand, curve.lineWidth()).longestGap() / plot.width();
    if (unseen > UNSEEN) {
      doubts.add(
          String.format(
              Locale.ROOT,
              "The line is hidden or missing over %.0f %% of the plot's width.",
              100 * unseen));
    }
    if (strand.doubt() > RIVAL) {
      doubts.add("Where lines meet, another way on was nearly as good.");
    }
    double widest = all.stream().mapToDouble(c -> c.strand().spanX()).max().orElse(0);
    if (strand.spanX() < PART * widest) {
      doubts.add(
          String.format(
              Locale.ROOT,
              "The line covers only %.0f %% of the plot's width and may be a part of a curve.",
              100 * strand.spanX() / plot.width()));
    }
    return doubts;
  }
}
