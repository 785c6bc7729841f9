package commonsheet.workbench.place;

import commonsheet.sheet.SheetException;
import commonsheet.workbench.folder.FileStamp;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.locks.ReentrantLock;

/**
 * A few sheets held open, so that their next page comes at once. Each is used by one request at a
 * time; requests to different sheets do not wait for each other.
 *
 * @param <F> what is held open
 */
final class OpenFiles<F extends AutoCloseable> implements AutoCloseable {
  /** Two persons with two sheets each; an open sheet takes some 10 to 50 MB. */
  private static final int MOST = 4;

  private final Opening<F> opening;
  private final Map<FileStamp, Held<F>> held = new LinkedHashMap<>(8, 0.75f, true);

  /** How a file is opened. */
  @FunctionalInterface
  interface Opening<F> {
    F open(Path file) throws SheetException;
  }

  /** What is done with an open file. */
  @FunctionalInterface
  interface Work<F, T> {
    T with(F file) throws SheetException;
  }

  private static final class Held<F extends AutoCloseable> {
    private final ReentrantLock use = new ReentrantLock();
    private volatile boolean unwanted;
    private F file;

    /** Closes it, unless it is in use; then who uses it closes it. */
    void closeIfUnwanted() {
      if (unwanted && use.tryLock()) {
        try {
          if (file != null) {
            file.close();
          }
        } catch (Exception unclosed) {
          // It was only read from; nothing is lost with it.
          return;
        } finally {
          file = null;
          use.unlock();
        }
      }
    }
  }

  OpenFiles(Opening<F> opening) {
    this.opening = opening;
  }

  /** Does something with a file, which is opened where it is not open. */
  <T> T use(FileStamp stamp, Work<F, T> work) throws SheetException {
    Held<F> one = one(stamp);
    one.use.lock();
    try {
      if (one.file == null) {
        one.file = opening.open(stamp.path());
      }
      return work.with(one.file);
    } finally {
      one.use.unlock();
      one.closeIfUnwanted();
    }
  }

  private Held<F> one(FileStamp stamp) {
    Held<F> oldest = null;
    Held<F> one;
    synchronized (held) {
      one = held.computeIfAbsent(stamp, unknown -> new Held<>());
      if (held.size() > MOST) {
        Iterator<Held<F>> all = held.values().iterator();
        oldest = all.next();
        all.remove();
      }
    }
    drop(oldest);
    return one;
  }

  private void drop(Held<F> one) {
    if (one != null) {
      one.unwanted = true;
      one.closeIfUnwanted();
    }
  }

  @Override
  public void close() {
    synchronized (held) {
      held.values().forEach(this::drop);
      held.clear();
    }
  }
}
