package commonsheet.workbench.place;

import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.Source;
import commonsheet.workbench.folder.FileStamp;
import commonsheet.workbench.folder.Folder;
import commonsheet.workbench.folder.SheetPlace;
import commonsheet.workbench.folder.Sheets;
import commonsheet.workbench.http.Refusal;
import java.io.IOException;
import java.nio.file.Path;

/** The sheet that the record of a request was read from. */
final class RecordSheets {
  private static final long MOST = 200;

  private final Folder folder;
  private final Sheets sheets;
  private final RecentMap<FileStamp, Source> sources = new RecentMap<>(MOST, source -> 1);

  RecordSheets(Folder folder, Sheets sheets) {
    this.folder = folder;
    this.sheets = sheets;
  }

  /**
   * The file of the sheet.
   *
   * @param file of the record, as requests name it
   * @throws Refusal where there is no such record, or its sheet is not there
   */
  Path of(String file) {
    SheetPlace place = sheets.of(source(folder.record(file)));
    if (!place.isFound()) {
      throw new Refusal(Refusal.Kind.MISSING, place.reason());
    }
    return place.file();
  }

  /** A page asks for the same record's sheet again and again, and reading a record takes longer. */
  private Source source(Path record) {
    try {
      FileStamp stamp = FileStamp.of(record);
      Source known = sources.get(stamp);
      if (known == null) {
        known = RecordStore.open(record).record().source();
        sources.put(stamp, known);
      }
      return known;
    } catch (IOException gone) {
      throw new Refusal(
          Refusal.Kind.MISSING, record + " is no longer there; it may have been moved.");
    } catch (RecordException unreadable) {
      throw new Refusal(Refusal.Kind.UNUSABLE, unreadable.getMessage());
    }
  }
}
