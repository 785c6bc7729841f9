package commonsheet.workbench.desk;

import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Source;
import commonsheet.workbench.http.Given;
import commonsheet.workbench.http.Refusal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** Where and when a value was seen that stands on no sheet. */
final class Seen {
  private Seen() {}

  /**
   * The place as a page gives it.
   *
   * @param title what the values were seen on
   * @param given its members {@code where} and {@code when}
   */
  static Source given(String title, Given given) {
    String where = said(given, "where", "Say where it was seen, such as the label of a pack.");
    String when = said(given, "when", "Say on which day it was seen.");
    try {
      return Source.seen(title, where, LocalDate.parse(when).toString());
    } catch (DateTimeParseException none) {
      throw new Refusal(
          Refusal.Kind.UNUSABLE, "\"" + when + "\" is no day; write it as 2026-05-03.");
    }
  }

  /** As the evidence of a value. */
  static Evidence of(Source seen, String text) {
    return new Evidence(
        null,
        null,
        text,
        Method.TYPED_IN,
        null,
        null,
        null,
        "seen: " + seen.where() + ", " + seen.when(),
        null);
  }

  /** A text that has to be there. */
  static String said(Given given, String member, String otherwise) {
    String text = given.text(member);
    if (text == null || text.isBlank()) {
      throw new Refusal(Refusal.Kind.UNUSABLE, otherwise);
    }
    return text.strip().replaceAll("\\s+", " ");
  }
}
