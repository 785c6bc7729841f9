package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.export.PageRanges;
import commonsheet.export.Printed;
import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Review;
import commonsheet.record.Source;
import commonsheet.record.Statement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The sheet that a cell's figures come from. Texts are cleaned of control characters; an absent one
 * is empty.
 *
 * @param pages on which the figures of the report stand, ascending
 */
record SheetSource(
    String title,
    String document,
    String revision,
    String date,
    String file,
    String sha256,
    List<Integer> pages) {
  private static final Source UNKNOWN =
      new Source(null, null, null, null, null, null, null, null, null);

  static SheetSource of(ReportedCell cell) {
    CellRecord record = cell.record();
    Source source = record.source() == null ? UNKNOWN : record.source();
    return new SheetSource(
        Printed.clean(source.title()),
        Printed.clean(source.document()),
        Printed.clean(source.revision()),
        Printed.clean(source.date()),
        Printed.clean(source.file()),
        Printed.clean(source.sha256()),
        pages(cell));
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

  /** Such as {@code approved by A. Keeper, 2031-06-01} or {@code draft}. */
  static String approval(ReportedCell cell) {
    Review review = review(cell);
    return Stream.of(
            Printed.clean(review.state())
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

  private static List<Integer> pages(ReportedCell cell) {
    Map<String, Evidence> places = new HashMap<>();
    for (Statement statement : cell.record().statements()) {
      places.put(statement.id(), statement.evidence());
    }
    for (Curve curve : cell.record().curves()) {
      places.put(curve.id(), curve.evidence());
    }
    return cell.contender().cell().figures().values().stream()
        .map(Figure::from)
        .flatMap(List::stream)
        .map(places::get)
        .filter(Objects::nonNull)
        .map(Evidence::page)
        .filter(Objects::nonNull)
        .distinct()
        .sorted()
        .toList();
  }
}
