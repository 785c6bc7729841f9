package commonsheet.workbench.desk;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Evidence;
import commonsheet.record.RecordIds;
import commonsheet.record.Review;
import commonsheet.record.Source;
import commonsheet.review.CellMember;
import commonsheet.review.Person;
import commonsheet.review.Settling;
import commonsheet.workbench.http.Given;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A record without a sheet, as a page gives it: a web page, the label of a pack. */
final class NewRecord {
  private static final Cell NOTHING_SAID = new Cell(null, null, null, null, null, null, null);

  private NewRecord() {}

  /** The record, still without a value. */
  static CellRecord of(Given given, Person person, Instant at) {
    String title = Seen.said(given, "title", "Say what it is, such as the name of the web page.");
    Seen.said(given, "model", "Say which model it is.");
    Source seen = Seen.given(title, given);
    Cell cell = NOTHING_SAID;
    Map<String, Evidence> evidence = new TreeMap<>();
    for (CellMember member : CellMember.values()) {
      String text = given.text(member.member());
      if (text != null && !text.isBlank()) {
        cell = member.set(cell, text.strip());
        evidence.put(member.member(), Seen.of(seen, text.strip()));
      }
    }
    Cell whole =
        new Cell(
            cell.maker(),
            cell.model(),
            cell.designation(),
            cell.chemistry(),
            cell.form(),
            cell.sizeCode(),
            evidence);
    CellRecord record =
        new CellRecord(
            CellRecord.SCHEMA,
            RecordIds.of(cell.maker(), cell.model(), title),
            whole,
            seen,
            List.of(),
            List.of(),
            List.of(),
            Review.DRAFT);
    return new Settling(person, at).begun(record);
  }
}
