package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordJson;
import commonsheet.record.RecordStore;
import commonsheet.record.Standing;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;

/**
 * The folder that {@code read} writes to. Reading a sheet again replaces its record; two sheets
 * that give the same name do not replace each other's: the second gets {@code -2} behind its name.
 * A record that a person has reviewed is never replaced.
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
   * @throws RecordException where it cannot be written, or would replace reviewed work
   */
  Path write(CellRecord record) throws RecordException {
    String id = record.id();
    for (int number = 2; !mayWrite(id, record); number++) {
      id = record.id() + "-" + number;
    }
    Path file = store.write(named(record, id));
    written.add(id);
    return file;
  }

  private boolean mayWrite(String id, CellRecord record) throws RecordException {
    if (written.contains(id)) {
      return false;
    }
    Path file = folder.resolve(id + ".json");
    if (!Files.exists(file)) {
      return true;
    }
    CellRecord earlier = read(file);
    if (!earlier.source().sha256().equals(record.source().sha256())) {
      return false;
    }
    if (isReviewed(earlier)) {
      throw new RecordException(
          file
              + " holds a person's review of this sheet and was left as it is; choose another"
              + " folder with --out to read the sheet anew");
    }
    return true;
  }

  private static CellRecord read(Path file) throws RecordException {
    try {
      return RecordJson.read(Files.readString(file, StandardCharsets.UTF_8), file.toString());
    } catch (IOException unreadable) {
      throw new RecordException(
          file + " is in the way and cannot be read; move it or choose another folder with --out",
          unreadable);
    }
  }

  private static boolean isReviewed(CellRecord record) {
    boolean approved = record.review() != null && "approved".equals(record.review().state());
    return approved
        || record.statements().stream()
            .anyMatch(s -> s.standing() != Standing.READ && s.standing() != Standing.UNSURE);
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
