package commonsheet.compare;

import commonsheet.quantity.PlainNumber;
import java.util.ArrayList;
import java.util.List;

/**
 * Judges whether cells carry a current, by the continuous discharge current that their sheets rate
 * them for.
 *
 * @param asked the rating that each cell must have at least, in A
 * @param peak the highest sustained current on each cell, in A
 */
record Judge(double asked, double peak) {
  /**
   * A rating that lies below what is asked by no more than this share is a near miss: common
   * practice, no source.
   */
  static final double NEAR = 0.10;

  /** Ratings are printed to three digits; what lies closer is equal. */
  private static final double EQUAL = 1e-6;

  private static final int DIGITS = 3;
  private static final double PERCENT = 100;

  /** What was found of one cell; the margin is null where the rating is not known. */
  record Judgement(Verdict verdict, Double margin, String reason) {}

  /** Judges by what a machine asks, or by the peak of the load where no requirement is given. */
  static Judge of(Condition condition, Requirement requirement) {
    return requirement == null
        ? new Judge(condition.load().peak(), condition.load().peak())
        : new Judge(requirement.ratingPerCell(), requirement.peakCurrent() / requirement.sharing());
  }

  Judgement judge(CellFigures cell) {
    Figure rating = cell.figure(Measure.CURRENT_RATING);
    Double least = least(rating);
    if (least == null) {
      return new Judgement(Verdict.NOT_KNOWN, null, unknown(rating));
    }
    if (asked == 0) {
      return new Judgement(Verdict.CARRIES, null, "nothing is asked");
    }
    double margin = least / asked - 1;
    List<String> words = new ArrayList<>();
    words.add(comparison(least, margin));
    if (rating.value() != null && rating.value() > least * (1 + EQUAL)) {
      words.add("the lower end of what is stated counts");
    }
    if (rating.unsure()) {
      words.add("the rating is unsure" + (rating.notes().isEmpty() ? "" : ": " + note(rating)));
    }
    Figure pulse = cell.figure(Measure.PULSE_RATING);
    if (peak > least * (1 + EQUAL) && least(pulse) != null) {
      words.add(pulse(least(pulse)));
    }
    return new Judgement(verdict(margin), margin, String.join("; ", words));
  }

  private static Verdict verdict(double margin) {
    if (margin >= -EQUAL) {
      return Verdict.CARRIES;
    }
    return margin >= -NEAR - EQUAL ? Verdict.NEAR_MISS : Verdict.FAILS;
  }

  /** What the cell is rated for at the very least, in A; null where that is not known. */
  static Double least(Figure rating) {
    if (rating.low() == null) {
      return rating.value();
    }
    return rating.value() == null
        ? rating.low()
        : Double.valueOf(Math.min(rating.low(), rating.value()));
  }

  private String unknown(Figure rating) {
    if (rating.high() != null) {
      return "its rating is not known, only that it is at most " + ampere(rating.high());
    }
    return rating.notes().isEmpty() ? "the sheet gives no current rating" : note(rating);
  }

  private String comparison(double rated, double margin) {
    String words = "rated " + ampere(rated) + ", asked " + ampere(asked) + ": ";
    double percent = Math.abs(margin) * PERCENT;
    if (percent <= EQUAL * PERCENT) {
      return words + "just enough";
    }
    return words + share(percent) + (margin < 0 ? " % too little" : " % to spare");
  }

  /** Whole per cents, and tenths of a small one, so that a shortfall never reads as nothing. */
  private static String share(double percent) {
    return percent >= 1
        ? PlainNumber.of(Math.rint(percent), DIGITS)
        : percent < 0.1 ? "less than 0.1" : PlainNumber.of(percent, 1);
  }

  private String pulse(double rated) {
    return rated >= peak * (1 - EQUAL)
        ? "its pulse rating of "
            + ampere(rated)
            + " covers the peak of "
            + ampere(peak)
            + " only for as long as the sheet allows a pulse"
        : "the peak of " + ampere(peak) + " exceeds even its pulse rating of " + ampere(rated);
  }

  private static String note(Figure figure) {
    return figure.notes().get(figure.notes().size() - 1).replaceAll("[.]$", "");
  }

  private static String ampere(double current) {
    return PlainNumber.of(current, DIGITS) + " A";
  }
}
