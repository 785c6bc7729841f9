package commonsheet.chart.reference;

import commonsheet.record.Curve;
import commonsheet.sheet.Point;

/** Along which side of a plot an axis runs. */
public enum Direction {
  /** From left to right: an x axis. */
  ACROSS("x"),
  /** From the top down: a y axis. */
  DOWN("y");

  private final String letter;

  Direction(String letter) {
    this.letter = letter;
  }

  /** {@code x} or {@code y}. */
  public String letter() {
    return letter;
  }

  /** Where a mark of such an axis stands; on an upright chart only its place along counts. */
  public Point place(Curve.Tick tick) {
    double beside = tick.across() == null ? 0 : tick.across();
    return this == ACROSS ? new Point(tick.at(), beside) : new Point(beside, tick.at());
  }
}
