package commonsheet.layout;

/**
 * What became of one labelled place of a sheet.
 *
 * @param page from 1
 * @param label the label as printed
 * @param value what stands beside it, as printed
 * @param result which rule read it as what, or why nothing came of it
 * @param matched whether a statement came of it
 */
public record Outcome(int page, String label, String value, String result, boolean matched) {
  /** Begins the result of a place whose label is not understood. */
  private static final String UNMATCHED = "unmatched";

  /** Whether the label was not understood, as opposed to being about something else. */
  public boolean unmatched() {
    return result.startsWith(UNMATCHED);
  }
}
