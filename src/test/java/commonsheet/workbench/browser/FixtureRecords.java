package commonsheet.workbench.browser;

import commonsheet.api.DatasheetReader;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.sheet.SheetException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The records of invented sheets as the program reads them, each sheet read once for all tests. */
final class FixtureRecords {
  static final Path SHEETS = Path.of("fixtures", "sheets");

  private static final Map<String, List<CellRecord>> READ = new ConcurrentHashMap<>();

  private FixtureRecords() {}

  /**
   * Writes the records of a sheet into a folder.
   *
   * @param sheet its file name without {@code .pdf}
   */
  static void write(String sheet, Path folder) throws RecordException {
    RecordStore store = new RecordStore(folder);
    for (CellRecord record : READ.computeIfAbsent(sheet, FixtureRecords::read)) {
      store.write(record);
    }
  }

  private static List<CellRecord> read(String sheet) {
    try {
      return DatasheetReader.standard().read(SHEETS.resolve(sheet + ".pdf")).records();
    } catch (SheetException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }
}
