package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.Source;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

/**
 * The folder that {@code read} writes to. Reading a sheet again replaces its record; where two
 * sheets, or two cells of one, give the same name, the second gets {@code -2} behind its name.
 */
final class RecordFolder {
  private final Path folder;
  private final RecordStore store;
  private final Set<String> written = new HashSet<>();

  RecordFolder(Path folder) {
    this.folder = folder;
    this.store = new RecordStore(folder);
  }

  /**
   * Writes a record under its own name or the next free one.
   *
   * @return the file written
   * @throws RecordException where it cannot be written, or would replace a person's work
   */
  Path write(CellRecord record) throws RecordException {
    String id = record.id();
    for (int number = 2; isAnothers(id, record.source()); number++) {
      id = record.id() + "-" + number;
    }
    Path file = store.write(named(record, id));
    written.add(id);
    return file;
  }

  private boolean isAnothers(String id, Source source) {
    if (written.contains(id)) {
      return true;
    }
    Path file = folder.resolve(id + ".json");
    if (Files.notExists(file)) {
      return false;
    }
    try {
      Source earlier = store.read(file).source();
      return !earlier.sha256().equals(source.sha256()) && !earlier.file().equals(source.file());
    } catch (RecordException unreadable) {
      // Writing to it says why not, in words of its own.
      return false;
    }
  }

  private static CellRecord named(CellRecord record, String id) {
    return new CellRecord(
        record.schema(),
        id,
        record.cell(),
        record.source(),
        record.statements(),
        record.curves(),
        record.findings(),
        record.review());
  }
}
