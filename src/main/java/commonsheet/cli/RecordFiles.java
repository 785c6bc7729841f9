package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The records that a command's arguments stand for: files, and folders of them. */
final class RecordFiles {
  private final List<CellRecord> records = new ArrayList<>();
  private final List<String> problems = new ArrayList<>();

  private RecordFiles() {}

  /** Reads record files, and the {@code .json} files of folders, in the order of the arguments. */
  static RecordFiles read(List<Path> arguments) {
    RecordFiles files = new RecordFiles();
    InputFiles inputs = InputFiles.find(arguments, ".json");
    files.problems.addAll(inputs.problems());
    for (Path path : inputs.files()) {
      try {
        files.records.add(new RecordStore(path.toAbsolutePath().getParent()).read(path));
      } catch (RecordException unusable) {
        files.problems.add(unusable.getMessage());
      }
    }
    return files;
  }

  List<CellRecord> records() {
    return List.copyOf(records);
  }

  /** A sentence for each file or folder that gave no record. */
  List<String> problems() {
    return List.copyOf(problems);
  }
}
