package commonsheet.export.report;

import commonsheet.export.PageRanges;
import commonsheet.export.Printed;
import commonsheet.export.SheetSource;
import commonsheet.record.Review;
import commonsheet.record.Source;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The sheet that a cell's figures come from. Texts are cleaned of control characters; an absent one
 * is empty.
 *
 * @param document its number; without a document, where and when the values were seen
 * @param pages on which the figures of the report stand, ascending
 */
record SheetUsed(
    String title,
    String document,
    String revision,
    String date,
    String file,
    String sha256,
    List<Integer> pages) {
  private static final Source UNKNOWN =
      new Source(null, null, null, null, null, null, null, null, null);

  static SheetUsed of(ReportedCell cell) {
    Source source = cell.record().source() == null ? UNKNOWN : cell.record().source();
    return new SheetUsed(
        Printed.clean(source.title()),
        Printed.clean(source.isDocument() ? source.document() : source.named()),
        Printed.clean(source.revision()),
        Printed.clean(source.date()),
        Printed.clean(source.file()),
        Printed.clean(source.sha256()),
        SheetSource.pages(cell.contender().cell()));
  }

  /** Such as {@code eb21700-48.pdf, SPEC-48, revision 3, 2031-05-17, p. 1, 3-4}. */
  String text() {
    return Stream.of(
            file,
            document,
            revision.isEmpty() ? "" : "revision " + revision,
            date,
            pages.isEmpty() ? "" : "p. " + PageRanges.text(pages))
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** The pages separated by semicolons. */
  String pageList() {
    return pages.stream().map(String::valueOf).collect(Collectors.joining("; "));
  }

  /**
   * Such as {@code approved by A. Keeper, 2031-06-01}, {@code reopened, approved before by A.
   * Keeper, 2031-06-01}, or {@code draft}.
   */
  static String approval(ReportedCell cell) {
    Review review = review(cell);
    return Stream.of(
            Printed.clean(review.state())
                + (review.state().equals(Review.REOPENED) ? ", approved before" : "")
                + (review.approvedBy() == null ? "" : " by " + Printed.clean(review.approvedBy())),
            Printed.clean(review.approvedAt()))
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(", "));
  }

  static Review review(ReportedCell cell) {
    return cell.record().review() == null ? Review.DRAFT : cell.record().review();
  }

  static boolean isApproved(ReportedCell cell) {
    return "approved".equals(review(cell).state());
  }
}
