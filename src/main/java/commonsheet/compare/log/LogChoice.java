package commonsheet.compare.log;

/**
 * What a person says of a log; each may be null, and is then told from the log itself.
 *
 * @param timeColumn name of the column of times, with its unit behind a slash where the log names
 *     none: {@code t / ms}
 * @param currentColumn name of the column of currents, likewise
 * @param discharge which sign a discharge has
 * @param chargedBack the charge that the charger put back after the log, in A.h
 */
public record LogChoice(
    String timeColumn, String currentColumn, Sign discharge, Double chargedBack) {
  /** Everything told from the log. */
  public static final LogChoice NONE = new LogChoice(null, null, null, null);

  /** The sign of a discharge in a log. */
  public enum Sign {
    POSITIVE,
    /** As the Battery Data Format of the LF Energy Battery Data Alliance has it. */
    NEGATIVE
  }
}
