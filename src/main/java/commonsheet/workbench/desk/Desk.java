package commonsheet.workbench.desk;

import commonsheet.api.Consequences;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordConflictException;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.StoredRecord;
import commonsheet.review.Person;
import commonsheet.review.RecordDesk;
import commonsheet.review.ReviewException;
import commonsheet.review.Settling;
import commonsheet.workbench.folder.Folder;
import commonsheet.workbench.http.Refusal;
import java.time.Clock;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * Where the records of the folder are shown and changed. A change is in its file before anybody is
 * told so; it is made only to the version of the file that the person saw.
 */
public final class Desk {
  private final Folder folder;
  private final RecordViews views;
  private final RecordDesk records = new RecordDesk(Consequences::drawn);

  /**
   * A desk over a folder.
   *
   * @param sheets finds the sheet of a record; gives null for a record without one
   */
  public Desk(Folder folder, Function<CellRecord, RecordView.SheetView> sheets) {
    this.folder = folder;
    this.views = new RecordViews(sheets);
  }

  /**
   * The record of a file as it is now.
   *
   * @param file its name in the folder
   * @throws Refusal where there is none, or it cannot be read
   */
  public RecordView view(String file) {
    return view(file, opened(file));
  }

  /** The version of a file as it is now. */
  String version(String file) {
    return opened(file).version();
  }

  /**
   * Makes a change and what follows from it, and writes it.
   *
   * @param what the deed in few words, for undoing it: {@code confirm s3}
   * @throws Refusal where it cannot be made, or the file has changed since the person saw it; then
   *     nothing is written
   */
  public synchronized RecordView change(Edit edit, String what, Deed deed) {
    StoredRecord before = seen(edit);
    Settling settling = new Settling(person(edit.by()), Clock.systemUTC().instant());
    try {
      records.change(before, record -> deed.of(settling, record));
    } catch (ReviewException | IllegalArgumentException refused) {
      throw new Refusal(Refusal.Kind.UNUSABLE, sentence(refused));
    } catch (RecordConflictException meanwhile) {
      throw conflict(edit.file());
    } catch (RecordException unwritten) {
      throw new Refusal(Refusal.Kind.UNWRITTEN, sentence(unwritten));
    }
    return view(edit.file());
  }

  private RecordView view(String file, StoredRecord stored) {
    return views.of(file, stored, Undoable.NOTHING);
  }

  private StoredRecord opened(String file) {
    try {
      return RecordStore.open(folder.record(file));
    } catch (RecordException unreadable) {
      throw new Refusal(Refusal.Kind.UNUSABLE, sentence(unreadable));
    }
  }

  /** The record, if it still is as the person saw it. */
  private StoredRecord seen(Edit edit) {
    StoredRecord now = opened(edit.file());
    if (!now.version().equals(edit.version())) {
      throw conflict(edit.file());
    }
    return now;
  }

  private Refusal conflict(String file) {
    return new Refusal(
        Refusal.Kind.CONFLICT,
        file
            + " has been changed by somebody else since you loaded it, so nothing was written. Load"
            + " it anew and do it again.",
        Map.of("version", version(file)));
  }

  private static Person person(String name) {
    if (name == null || name.isBlank()) {
      throw new Refusal(Refusal.Kind.UNUSABLE, "Say who you are first.");
    }
    try {
      return new Person(name);
    } catch (IllegalArgumentException unusable) {
      throw new Refusal(Refusal.Kind.UNUSABLE, sentence(unusable));
    }
  }

  /** What went wrong as a sentence of its own. */
  private static String sentence(Exception fault) {
    String said = fault.getMessage();
    String begun = said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1);
    return begun.endsWith(".") ? begun : begun + ".";
  }
}
