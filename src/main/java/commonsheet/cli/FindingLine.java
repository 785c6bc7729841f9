package commonsheet.cli;

import commonsheet.record.Finding;
import java.util.Locale;

/** A finding on one line. */
final class FindingLine {
  private FindingLine() {}

  /** Such as {@code warning relation/energy (s4, s5): The sheet gives …}. */
  static String of(Finding finding) {
    return finding.severity().name().toLowerCase(Locale.ROOT)
        + " "
        + finding.rule()
        + (finding.about().isEmpty() ? "" : " (" + String.join(", ", finding.about()) + ")")
        + ": "
        + finding.message()
        + (finding.isOpen()
            ? ""
            : " Accepted by " + finding.accepted().by() + ": " + finding.accepted().reason());
  }
}
