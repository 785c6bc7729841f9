package commonsheet.workbench.folder;

import commonsheet.record.ReadRecord;
import commonsheet.record.RecordStore;
import commonsheet.review.Overview;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The records of the folder in short. A file is read again only when its size or its time of change
 * is another, so that thousands are listed at once.
 */
final class KnownRecords {
  private final Folder folder;
  private final Map<Path, Known> known = new ConcurrentHashMap<>();

  /**
   * What became of a file.
   *
   * @param row null where it is no readable record
   * @param problem why it cannot be read; null where it can, or is no record at all
   */
  record Known(FileStamp stamp, FolderListing.Row row, FolderListing.Problem problem) {}

  KnownRecords(Folder folder) {
    this.folder = folder;
  }

  /** What became of each file, in their order. */
  List<Known> of(List<FileStamp> files) {
    List<FileStamp> unknown = files.stream().filter(file -> !isKnown(file)).toList();
    List<ReadRecord> read = RecordStore.readAll(unknown.stream().map(FileStamp::path).toList());
    for (int i = 0; i < unknown.size(); i++) {
      known.put(unknown.get(i).path(), known(unknown.get(i), read.get(i)));
    }
    List<Known> all = new ArrayList<>();
    for (FileStamp file : files) {
      all.add(known.get(file.path()));
    }
    return all;
  }

  private boolean isKnown(FileStamp file) {
    Known before = known.get(file.path());
    return before != null && before.stamp().equals(file);
  }

  private Known known(FileStamp file, ReadRecord read) {
    String name = folder.name(file.path());
    if (read.record() != null) {
      Overview overview = Overview.of(read.record());
      return new Known(file, FolderListing.Row.of(name, overview), null);
    }
    return OtherJson.isOther(file.path())
        ? new Known(file, null, null)
        : new Known(file, null, new FolderListing.Problem(name, read.problem().getMessage()));
  }
}
