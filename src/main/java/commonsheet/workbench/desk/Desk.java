package commonsheet.workbench.desk;

import commonsheet.api.Consequences;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordConflictException;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.StoredRecord;
import commonsheet.review.Approval;
import commonsheet.review.Person;
import commonsheet.review.RecordDesk;
import commonsheet.review.ReviewException;
import commonsheet.review.Settling;
import commonsheet.workbench.folder.Folder;
import commonsheet.workbench.http.Given;
import commonsheet.workbench.http.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Clock;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * Where the records of the folder are shown and changed. A change is in its file before anybody is
 * told so; it is made only to the version of the file that the person saw.
 */
public final class Desk {
  /** How many records of one name a folder is tried for. */
  private static final int MOST_NAMESAKES = 1000;

  private final Folder folder;
  private final RecordViews views;
  private final UndoHistory history;
  private final RecordDesk records = new RecordDesk(Consequences::drawn);

  /**
   * A desk over a folder.
   *
   * @param sheets finds the sheet of a record; gives null for a record without one
   */
  public Desk(Folder folder, Function<CellRecord, RecordView.SheetView> sheets) {
    this.folder = folder;
    this.history = new UndoHistory(folder.path());
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

  /** The record of a file as it is now, for whoever only reads. */
  CellRecord record(String file) {
    return opened(file).record();
  }

  /** The version of a file as it is now, whatever it holds. */
  String version(String file) {
    try {
      return RecordStore.versionOf(Files.readAllBytes(folder.record(file)));
    } catch (IOException unreadable) {
      throw new Refusal(
          Refusal.Kind.UNWRITTEN, file + " cannot be read; check that it is a file you may read.");
    }
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
    Person person = person(edit.by());
    Settling settling = new Settling(person, Clock.systemUTC().instant());
    return written(
        edit,
        () -> {
          CellRecord after = records.changed(before.record(), record -> deed.of(settling, record));
          keep(before, new UndoSteps.Step(versionOf(after), what, person.name()));
          RecordStore.save(before, after);
        });
  }

  /**
   * Takes the last deed at a record back, as if it had not been.
   *
   * @throws Refusal where there is none, where it was another person's, or where the file has
   *     changed since the person saw it
   */
  public synchronized RecordView undo(Edit edit) {
    StoredRecord now = seen(edit);
    Undoable undoable = history.at(now.file(), now.version());
    return moved(
        edit, now, undoable.undo(), undoable.undoBy(), history.before(now.file(), now.version()));
  }

  /** Does again what was undone last; like {@link #undo}. */
  public synchronized RecordView redo(Edit edit) {
    StoredRecord now = seen(edit);
    Undoable undoable = history.at(now.file(), now.version());
    return moved(
        edit, now, undoable.redo(), undoable.redoBy(), history.after(now.file(), now.version()));
  }

  private RecordView moved(Edit edit, StoredRecord now, String what, String whose, byte[] other) {
    if (what == null || other == null) {
      throw new Refusal(Refusal.Kind.UNUSABLE, "There is nothing to take back or do again.");
    }
    if (!person(edit.by()).is(whose)) {
      throw new Refusal(
          Refusal.Kind.UNUSABLE,
          "The deed \"" + what + "\" is that of " + whose + ", who alone can take it back.");
    }
    return written(
        edit,
        () -> {
          history.keep(now.file(), Files.readAllBytes(now.file()));
          RecordStore.restore(now, other);
        });
  }

  /**
   * Approves a record. It cannot be undone: a later change reopens the record, and says so.
   *
   * @param ownWork whether the person says that they approve what they prepared themselves
   */
  public synchronized RecordView approve(Edit edit, boolean ownWork) {
    StoredRecord before = seen(edit);
    Person person = person(edit.by());
    if (Approval.isOwnWork(before.record(), person) && !ownWork) {
      throw new Refusal(
          Refusal.Kind.UNUSABLE,
          person.name()
              + " has worked on this record, so that another person should approve it. Say that"
              + " it is your own work if you approve it all the same; that is recorded.",
          Map.of("ownWork", true));
    }
    return written(
        edit, () -> records.approve(before, person, ownWork, Clock.systemUTC().instant()));
  }

  /**
   * Begins a record without a sheet, in a file of its own.
   *
   * @return the name of the file
   */
  String create(Given given) {
    Person person = person(given.text("by"));
    CellRecord record =
        Consequences.drawn(NewRecord.of(given, person, Clock.systemUTC().instant()));
    RecordStore store = new RecordStore(folder.path());
    for (int number = 1; ; number++) {
      String id = number == 1 ? record.id() : record.id() + "-" + number;
      try {
        return folder.name(store.create(record.named(id)));
      } catch (RecordConflictException taken) {
        if (number == MOST_NAMESAKES) {
          throw new Refusal(Refusal.Kind.CONFLICT, sentence(taken));
        }
      } catch (RecordException unwritten) {
        throw new Refusal(Refusal.Kind.UNUSABLE, sentence(unwritten));
      }
    }
  }

  /** Something that writes a record. */
  private interface Writing {
    void run() throws ReviewException, RecordException, IOException;
  }

  private RecordView written(Edit edit, Writing writing) {
    try {
      writing.run();
    } catch (ReviewException | IllegalArgumentException refused) {
      throw new Refusal(Refusal.Kind.UNUSABLE, sentence(refused));
    } catch (RecordConflictException meanwhile) {
      throw conflict(edit.file());
    } catch (RecordException unwritten) {
      throw new Refusal(Refusal.Kind.UNWRITTEN, sentence(unwritten));
    } catch (IOException unwritten) {
      throw new Refusal(
          Refusal.Kind.UNWRITTEN,
          "Nothing was written, because the folder cannot be; check its permissions and space.");
    }
    return view(edit.file());
  }

  private static String versionOf(CellRecord after) throws ReviewException {
    try {
      return RecordStore.versionOf(after);
    } catch (RecordException invalid) {
      throw new ReviewException(invalid.getMessage());
    }
  }

  /** A change is not refused because its history cannot be kept; then it cannot be undone. */
  private void keep(StoredRecord before, UndoSteps.Step step) {
    try {
      history.ahead(before.file(), Files.readAllBytes(before.file()), step);
    } catch (IOException withoutHistory) {
      return;
    }
  }

  private RecordView view(String file, StoredRecord stored) {
    return views.of(file, stored, history.at(stored.file(), stored.version()));
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
