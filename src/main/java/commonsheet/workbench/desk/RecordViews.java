package commonsheet.workbench.desk;

import commonsheet.record.CellRecord;
import commonsheet.record.Evidence;
import commonsheet.record.Finding;
import commonsheet.record.StoredRecord;
import commonsheet.review.Approval;
import commonsheet.review.CellMember;
import commonsheet.review.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * Records as their pages show them.
 *
 * @param sheets finds the sheet of a record; gives null for a record without one
 */
record RecordViews(Function<CellRecord, RecordView.SheetView> sheets) {
  RecordView of(String name, StoredRecord stored, Undoable undoable) {
    CellRecord record = stored.record();
    List<RecordView.Part> parts = PartViews.of(record);
    return new RecordView(
        name,
        stored.version(),
        record.review().state(),
        record,
        parts,
        cell(record),
        findings(record),
        stage(record, parts),
        record.review().steps(),
        sheets.apply(record),
        undoable.undo(),
        undoable.undoBy(),
        undoable.redo(),
        undoable.redoBy());
  }

  private static List<RecordView.Member> cell(CellRecord record) {
    return Arrays.stream(CellMember.values())
        .map(
            member -> {
              Evidence evidence = record.cell().evidence().get(member.member());
              return new RecordView.Member(
                  member.member(),
                  member.title(),
                  member.of(record.cell()),
                  evidence == null ? null : evidence.text(),
                  PartViews.place(evidence));
            })
        .toList();
  }

  private static List<RecordView.Found> findings(CellRecord record) {
    List<RecordView.Found> found = new ArrayList<>();
    for (Finding finding : record.findings()) {
      found.add(
          new RecordView.Found(
              found.size(),
              finding.rule(),
              finding.severity().name().toLowerCase(Locale.ROOT),
              finding.about(),
              finding.message(),
              finding.source(),
              finding.isOpen(),
              finding.accepted()));
    }
    return found;
  }

  private static RecordView.Stage stage(CellRecord record, List<RecordView.Part> parts) {
    List<String> unsettled = Progress.of(record).unsettled();
    int total = 0;
    for (RecordView.Part part : parts) {
      boolean follows = part.derived() && part.standing().equals("read");
      total += !follows || unsettled.contains(part.id()) ? 1 : 0;
    }
    return new RecordView.Stage(
        total - unsettled.size(),
        total,
        unsettled,
        Approval.obstacles(record).stream().map(RecordViews::sentence).toList(),
        Approval.preparers(record));
  }

  private static String sentence(String part) {
    String begun = part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1);
    return begun.endsWith(".") ? begun : begun + ".";
  }
}
