package commonsheet.api;

import commonsheet.chart.derived.CurvesOfRecord;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.Source;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The folder that {@code read} writes to. Reading a sheet again replaces its record; where two
 * sheets, or two cells of one, give the same name, the second gets {@code -2} behind its name.
 */
public final class RecordFolder {
  private final Path folder;
  private final RecordStore store;
  private final Set<String> written = new HashSet<>();

  /**
   * A folder, for one run.
   *
   * @param folder need not exist yet
   */
  public RecordFolder(Path folder) {
    this.folder = folder;
    this.store = new RecordStore(folder);
  }

  /**
   * The records of a sheet as the folder has them, or as they were read where it has none of this
   * very file.
   */
  public List<CellRecord> of(List<CellRecord> read) {
    List<CellRecord> known = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (CellRecord record : read) {
      String id = freeId(record, taken);
      taken.add(id);
      known.add(earlier(id, record.source()).orElse(record));
    }
    return known;
  }

  /**
   * Writes a record under its own name or the next free one. Points and logs that a person put into
   * an earlier record of the sheet are carried over.
   *
   * @return as it was written
   * @throws RecordException where it cannot be written, or would replace a person's work
   */
  public Written write(CellRecord record) throws RecordException {
    String id = freeId(record, written);
    CellRecord fresh = record.named(id);
    CellRecord whole =
        earlier(id, record.source())
            .map(earlier -> CurvesOfRecord.keeping(fresh, earlier))
            .orElse(fresh);
    Path file = store.write(whole);
    written.add(id);
    return new Written(whole, file);
  }

  /** A record and the file it stands in. */
  public record Written(CellRecord record, Path file) {}

  /** The record's own id or the next that is neither taken nor another sheet's. */
  private String freeId(CellRecord record, Set<String> taken) {
    String id = record.id();
    for (int number = 2; taken.contains(id) || isAnothers(id, record.source()); number++) {
      id = record.id() + "-" + number;
    }
    return id;
  }

  /** The record that is there already, if it is of this very file. */
  private Optional<CellRecord> earlier(String id, Source source) {
    Path file = folder.resolve(id + ".json");
    if (Files.notExists(file)) {
      return Optional.empty();
    }
    try {
      CellRecord earlier = store.read(file);
      return earlier.source().isSameFileAs(source) ? Optional.of(earlier) : Optional.empty();
    } catch (RecordException unreadable) {
      // Writing to it says why not, in words of its own.
      return Optional.empty();
    }
  }

  private boolean isAnothers(String id, Source source) {
    Path file = folder.resolve(id + ".json");
    if (Files.notExists(file)) {
      return false;
    }
    try {
      Source earlier = store.read(file).source();
      return !earlier.isSameFileAs(source)
          && (!earlier.isDocument() || !earlier.file().equals(source.file()));
    } catch (RecordException unreadable) {
      // Writing to it says why not, in words of its own.
      return false;
    }
  }
}
