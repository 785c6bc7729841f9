package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The records that a command's arguments stand for.
 *
 * @param problems a sentence for each file that is no record, and each folder without one
 */
record RecordsGiven(List<CellRecord> records, List<String> problems) {
  /** Reads record files, and the .json files of folders. */
  static RecordsGiven read(List<Path> arguments) {
    InputFiles inputs = InputFiles.find(arguments, ".json");
    List<String> problems = new ArrayList<>(inputs.problems());
    List<CellRecord> records = new ArrayList<>();
    for (Path path : inputs.files()) {
      try {
        records.add(new RecordStore(path.toAbsolutePath().getParent()).read(path));
      } catch (RecordException unusable) {
        problems.add(unusable.getMessage());
      }
    }
    return new RecordsGiven(records, problems);
  }

  /** Those that a person approved; says how many are not. */
  List<CellRecord> approved(PrintWriter err) {
    List<CellRecord> approved = records.stream().filter(RecordsGiven::isApproved).toList();
    int others = records.size() - approved.size();
    if (others > 0) {
      err.println(
          approved.isEmpty()
              ? "commonsheet: none of "
                  + SheetLine.count(others, "record")
                  + " is approved; approve them, or leave out --approved-only."
              : "commonsheet: " + SheetLine.count(others, "record") + " not approved, left out.");
    }
    return approved;
  }

  /** Whether a person approved the record as it is now. */
  static boolean isApproved(CellRecord record) {
    return record.review() != null && record.review().state().equals("approved");
  }
}
