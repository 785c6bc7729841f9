package commonsheet.workbench.folder;

import commonsheet.api.DatasheetReader;
import commonsheet.api.RecordFolder;
import commonsheet.api.TimeLimit;
import commonsheet.layout.LayoutException;
import commonsheet.layout.Reading;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.sheet.KeptWords;
import commonsheet.sheet.SheetException;
import commonsheet.workbench.http.Refusal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeoutException;

/**
 * Reads sheets into records of the folder, one after another, while pages ask how far it is. What a
 * person settled in a record is never replaced.
 */
final class SheetReading {
  /** A page that is a picture takes some seconds; see the command {@code read}. */
  private static final Duration LIMIT = Duration.ofSeconds(180);

  /** Jobs that are remembered; pages ask for theirs every second. */
  private static final int MOST = 1_000;

  private final Folder folder;
  private final Path layouts;
  private final Map<String, Job> jobs = new LinkedHashMap<>();
  private final ExecutorService one =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "read sheets");
            thread.setDaemon(true);
            return thread;
          });
  private DatasheetReader reader;
  private int number;

  SheetReading(Folder folder, Path layouts) {
    this.folder = folder;
    this.layouts = layouts;
  }

  /** How far the reading of a sheet is. */
  enum State {
    WAITING,
    WORKING,
    DONE,
    FAILED;

    String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /**
   * The reading of a sheet.
   *
   * @param state waiting, working, done or failed
   * @param sentence what happens, or what came of it
   * @param records the files that were written
   */
  record Job(String state, String sentence, List<String> records) {}

  /** Begins to read a sheet; gives the name of the job. */
  synchronized String start(Path sheet) {
    String id = "job-" + ++number;
    set(id, State.WAITING, sheet.getFileName() + " is read when those before it are.", List.of());
    one.execute(() -> read(id, sheet));
    return id;
  }

  /**
   * How far a job is.
   *
   * @throws Refusal where there is none of the name
   */
  synchronized Job job(String id) {
    Job job = jobs.get(id);
    if (job == null) {
      throw new Refusal(
          Refusal.Kind.MISSING, "The workbench was started anew since; load the page anew.");
    }
    return job;
  }

  private synchronized void set(String id, State state, String sentence, List<String> records) {
    jobs.put(id, new Job(state.word(), sentence, records));
    if (jobs.size() > MOST) {
      jobs.remove(jobs.keySet().iterator().next());
    }
  }

  private void read(String id, Path sheet) {
    String name = sheet.getFileName().toString();
    set(id, State.WORKING, "Reading " + name + ".", List.of());
    try {
      Reading read = new TimeLimit(LIMIT).call("read " + name, () -> reader().read(sheet));
      if (read.records().isEmpty()) {
        set(id, State.FAILED, name + ": " + read.reason(), List.of());
      } else {
        write(id, name, read.records());
      }
    } catch (TimeoutException late) {
      reader = null;
      fail(id, name + " was not read within " + LIMIT.toSeconds() + " seconds; split it.");
    } catch (ExecutionException failed) {
      reader = null;
      fail(id, sentence(name, failed.getCause()));
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  private void fail(String id, String sentence) {
    set(id, State.FAILED, sentence, List.of());
  }

  private static String sentence(String name, Throwable cause) {
    if (cause instanceof SheetException || cause instanceof LayoutException) {
      return cause.getMessage();
    }
    return cause instanceof OutOfMemoryError
        ? name + " does not fit into memory; split it, or give the program more memory."
        : name + " could not be read by a fault of the program; please report it with the file.";
  }

  private void write(String id, String name, List<CellRecord> records) {
    RecordFolder written = new RecordFolder(folder.path());
    List<String> files = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (CellRecord record : records) {
      try {
        files.add(folder.name(written.write(record).file()));
      } catch (RecordException unwritten) {
        problems.add(unwritten.getMessage());
      }
    }
    if (problems.isEmpty()) {
      set(id, State.DONE, name + " was read.", files);
    } else {
      set(id, State.FAILED, String.join(" ", problems), files);
    }
  }

  /** Loaded with the first sheet; after a fault a new one, since the old may still be at work. */
  private DatasheetReader reader() throws LayoutException {
    if (reader == null) {
      reader = DatasheetReader.withLayouts(layouts, KeptWords.ofMachine());
    }
    return reader;
  }
}
