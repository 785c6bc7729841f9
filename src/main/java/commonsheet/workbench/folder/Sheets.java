package commonsheet.workbench.folder;

import commonsheet.record.CellRecord;
import commonsheet.record.Source;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Finds the sheet of a record in the folders of sheets: by its name, and by the SHA-256 of its
 * content, since a place in another edition would show something else than what was read.
 */
public final class Sheets {
  /** Bytes that are looked through for a sheet whose name has changed; some seconds' worth. */
  private static final long MOST_SEARCHED = 1L << 30;

  private final Folder folder;
  private final Map<Path, Hashed> hashes = new ConcurrentHashMap<>();

  private record Hashed(FileStamp stamp, String sha256) {}

  /** The sheets of a folder's records. */
  public Sheets(Folder folder) {
    this.folder = folder;
  }

  /** The sheet of a record, or why it is not there. */
  public SheetPlace of(CellRecord record) {
    return of(record.source());
  }

  /** The sheet of a source, or why it is not there. */
  public SheetPlace of(Source source) {
    if (source == null || source.file() == null || source.sha256() == null) {
      return new SheetPlace(null, "This record was typed in; it has no sheet.");
    }
    List<FileStamp> all = folder.sheets();
    List<FileStamp> named = new ArrayList<>();
    for (FileStamp each : all) {
      if (each.path().getFileName().toString().equals(source.file())) {
        named.add(each);
      }
    }
    for (FileStamp each : named) {
      if (source.sha256().equals(sha256(each))) {
        return new SheetPlace(each.path(), null);
      }
    }
    return elsewhere(source, all, named);
  }

  private SheetPlace elsewhere(Source source, List<FileStamp> all, List<FileStamp> named) {
    long searched = 0;
    for (FileStamp each : all) {
      searched += each.size();
      if (searched > MOST_SEARCHED) {
        break;
      }
      if (source.sha256().equals(sha256(each))) {
        return new SheetPlace(
            each.path(), "The sheet is called " + each.path().getFileName() + " now.");
      }
    }
    if (named.isEmpty()) {
      return new SheetPlace(
          null,
          "The sheet "
              + source.file()
              + " is not in "
              + folders()
              + "; put it there, or name its folder by --sheets.");
    }
    return new SheetPlace(
        null,
        named.get(0).path()
            + " is not the file that this record was read from; put the earlier edition into one of"
            + " the folders, or read the new one.");
  }

  private String folders() {
    return String.join(" or ", folder.sheetFolders().stream().map(Path::toString).toList());
  }

  /** Null where the file cannot be read. */
  private String sha256(FileStamp file) {
    Hashed known = hashes.get(file.path());
    if (known == null || !known.stamp().equals(file)) {
      try {
        known = new Hashed(file, FileHash.sha256(file.path()));
      } catch (IOException unreadable) {
        return null;
      }
      hashes.put(file.path(), known);
    }
    return known.sha256();
  }
}
