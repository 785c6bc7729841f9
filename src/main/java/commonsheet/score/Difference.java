package commonsheet.score;

/**
 * One point in which a statement differs from what the sheet says.
 *
 * @param in {@code statistic}, {@code unit}, {@code value}, {@code low}, {@code high}, or a
 *     condition as {@code conditions.cutoffVoltage}
 * @param expected what the sheet says, or null if it says nothing there
 * @param read what the record says, or null if it says nothing there
 */
public record Difference(String in, String expected, String read) {
  @Override
  public String toString() {
    return in
        + " "
        + (read == null ? "absent" : read)
        + " instead of "
        + (expected == null ? "none" : expected);
  }
}
