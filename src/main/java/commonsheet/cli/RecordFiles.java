package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.record.ReadRecord;
import commonsheet.record.RecordStore;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The records that a command's arguments stand for.
 *
 * @param records those that could be read, in the order of the arguments
 * @param problems how many files or folders could not be
 */
record RecordFiles(List<ReadRecord> records, int problems) {
  RecordFiles {
    records = List.copyOf(records);
  }

  /** Reads them; says on {@code err} what cannot be read. */
  static RecordFiles read(List<Path> arguments, PrintWriter err) {
    InputFiles inputs = InputFiles.find(arguments, ".json");
    List<String> problems = new ArrayList<>(inputs.problems());
    List<ReadRecord> records = new ArrayList<>();
    for (ReadRecord read : RecordStore.readAll(inputs.files())) {
      if (read.problem() == null) {
        records.add(read);
      } else {
        problems.add(read.problem().getMessage());
      }
    }
    problems.forEach(problem -> err.println("commonsheet: " + problem));
    err.flush();
    return new RecordFiles(records, problems.size());
  }

  /** The records without their files. */
  List<CellRecord> contents() {
    return records.stream().map(ReadRecord::record).toList();
  }

  /** The records that a person approved; says on {@code err} how many are not. */
  List<CellRecord> approved(PrintWriter err) {
    List<CellRecord> approved = contents().stream().filter(RecordFiles::isApproved).toList();
    int others = records.size() - approved.size();
    if (others > 0) {
      err.println(
          approved.isEmpty()
              ? "commonsheet: none of "
                  + SheetLine.count(others, "record")
                  + " is approved; approve them, or leave out --approved-only."
              : "commonsheet: " + SheetLine.count(others, "record") + " not approved, left out.");
      err.flush();
    }
    return approved;
  }

  /** Whether a person approved the record as it is now. */
  static boolean isApproved(CellRecord record) {
    return record.review() != null && record.review().state().equals("approved");
  }

  /** The status of a command that did its work on them. */
  int status() {
    return ExitStatus.of(records.size(), problems);
  }
}
