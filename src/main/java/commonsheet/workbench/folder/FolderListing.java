package commonsheet.workbench.folder;

import commonsheet.record.CellRecord;
import commonsheet.review.Overview;
import java.util.List;

/**
 * What is in the folder.
 *
 * @param problems files that look like records and cannot be read, with a sentence each
 */
record FolderListing(String folder, List<Row> records, List<Problem> problems) {
  /** A record in short; see {@link Overview}. */
  record Row(
      String file,
      String id,
      String maker,
      String model,
      String form,
      String sizeCode,
      String sheet,
      String state,
      int statements,
      int curves,
      int unsettled,
      int errors,
      int warnings,
      int notes,
      List<String> missing) {
    static Row of(String file, Overview overview) {
      CellRecord record = overview.record();
      return new Row(
          file,
          record.id(),
          record.cell().maker(),
          record.cell().model(),
          record.cell().form(),
          record.cell().sizeCode(),
          record.source().file(),
          overview.state(),
          record.statements().size(),
          record.curves().size(),
          overview.unsettled(),
          overview.errors(),
          overview.warnings(),
          overview.notes(),
          overview.missing());
    }
  }

  /** A file that cannot be read as a record. */
  record Problem(String file, String sentence) {}
}
