package commonsheet.chart.axis;

import commonsheet.sheet.Box;

/** A side of a plot along which an axis stands. */
public enum Side {
  LEFT,
  RIGHT,
  BOTTOM,
  TOP;

  /** Whether the axis runs across the page. */
  public boolean level() {
    return this == BOTTOM || this == TOP;
  }

  /** How far a box stands outside the frame on this side, in points; negative inside. */
  public double outside(Box box, Box frame) {
    return switch (this) {
      case LEFT -> frame.x() - box.right();
      case RIGHT -> box.x() - frame.right();
      case BOTTOM -> box.y() - frame.bottom();
      case TOP -> frame.y() - box.bottom();
    };
  }

  /** The middle of a box along the axis. */
  public double along(Box box) {
    return level() ? box.centreX() : box.centreY();
  }

  /** Which axis, in a sentence. */
  public String printed() {
    return switch (this) {
      case LEFT -> "left axis";
      case RIGHT -> "right axis";
      case BOTTOM -> "x axis";
      case TOP -> "upper x axis";
    };
  }
}
