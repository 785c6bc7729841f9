package commonsheet.workbench.browser;

import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The only record of a workbench as its file says it. */
final class RecordFile {
  private RecordFile() {}

  static CellRecord read(OpenWorkbench workbench) throws IOException, RecordException {
    return RecordStore.open(path(workbench)).record();
  }

  /** Changes its text as a text editor would. */
  static void replace(OpenWorkbench workbench, String text, String other) throws IOException {
    String before = Files.readString(path(workbench));
    if (!before.contains(text)) {
      throw new IllegalArgumentException("the record does not say " + text);
    }
    Files.writeString(path(workbench), before.replace(text, other));
  }

  private static Path path(OpenWorkbench workbench) throws IOException {
    return workbench.folder().resolve(workbench.onlyRecord());
  }
}
