package commonsheet.chart.points;

/**
 * A file that gives no curve. The message is one sentence with the file, the line where there is
 * one, what is wrong and what to do.
 */
public final class PointsException extends Exception {
  private static final long serialVersionUID = 1L;

  PointsException(String message) {
    super(message);
  }
}
