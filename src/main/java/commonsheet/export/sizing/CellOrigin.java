package commonsheet.export.sizing;

import commonsheet.export.Printed;
import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Review;
import commonsheet.record.Source;

/**
 * Which cell, from which sheet, approved by whom: what stands beside every exported figure. Texts
 * are on one line and without control characters; what the record does not say is null.
 *
 * @param id the record's id
 * @param cell without evidence
 * @param source the sheet; null where the record names none; without a document it says where and
 *     when the values were seen in place of the document's number
 * @param review its state, who approved it and when
 */
public record CellOrigin(String id, Cell cell, Source source, Review review) {
  private static final Cell NOTHING_SAID = new Cell(null, null, null, null, null, null, null);

  static CellOrigin of(CellRecord record) {
    return new CellOrigin(
        record.id(),
        clean(record.cell() == null ? NOTHING_SAID : record.cell()),
        record.source() == null ? null : clean(record.source()),
        clean(record.review() == null ? Review.DRAFT : record.review()));
  }

  private static Cell clean(Cell cell) {
    return new Cell(
        clean(cell.maker()),
        clean(cell.model()),
        clean(cell.designation()),
        clean(cell.chemistry()),
        clean(cell.form()),
        clean(cell.sizeCode()),
        null);
  }

  private static Source clean(Source source) {
    return new Source(
        null,
        clean(source.isDocument() ? source.document() : source.named()),
        clean(source.revision()),
        clean(source.date()),
        clean(source.file()),
        source.sha256(),
        null,
        null,
        null);
  }

  private static Review clean(Review review) {
    return new Review(
        review.state(), null, null, clean(review.approvedBy()), review.approvedAt(), null);
  }

  private static String clean(String text) {
    String clean = Printed.clean(text);
    return clean.isEmpty() ? null : clean;
  }
}
