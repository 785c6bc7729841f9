package commonsheet.cli;

import static java.util.regex.Matcher.quoteReplacement;

import commonsheet.check.Checks;
import commonsheet.layout.Reading;
import commonsheet.layout.RecordReader;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetReader;
import commonsheet.sheet.SheetSettings;
import commonsheet.sheet.ocr.PictureWords;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;

/**
 * Reads sheets one by one so that none can hold up or end a batch: each has a time limit, and a
 * fault or a lack of memory in one is its own outcome only.
 */
final class TimedReader {
  /**
   * A written page takes a fraction of a second, one that is a picture some seconds on a common
   * machine.
   */
  private static final Duration LIMIT = Duration.ofSeconds(180);

  /** Deeply nested PDF objects are walked by recursion; the usual 1 MiB runs out early. */
  private static final long STACK_BYTES = 8L << 20;

  /** How one sheet is read. */
  @FunctionalInterface
  interface Work {
    SheetOutcome.Read read(Path file) throws SheetException, InterruptedException;
  }

  private final Work work;
  private final Duration limit;

  TimedReader(Work work, Duration limit) {
    this.work = work;
    this.limit = limit;
  }

  /**
   * A reader that finds values by layout rules, the built-in ones and those of a folder. The rules
   * load while the words of the first sheet are taken from their file.
   *
   * @param layouts null for the built-in rules only
   * @throws CommandException for a folder or rule file that is not as it should be
   */
  static TimedReader by(Path layouts) throws CommandException {
    Ahead<RecordReader> records = Layouts.reader(layouts);
    SheetReader sheets = new SheetReader(SheetSettings.defaults(), new PictureWords());
    return new TimedReader(
        file -> {
          Sheet sheet = sheets.readSheet(file);
          return new SheetOutcome.Read(sheet, checked(records.get().read(sheet)));
        },
        LIMIT);
  }

  private static Reading checked(Reading reading) {
    Checks checks = Checks.standard();
    return new Reading(
        reading.records().stream().map(checks::applied).toList(),
        reading.explanation(),
        reading.reason());
  }

  /**
   * Reads one sheet. A reading past its time is interrupted and left behind: the Java machine
   * cannot end it by force, and the process does not wait for it.
   */
  SheetOutcome read(Path file) throws InterruptedException {
    FutureTask<SheetOutcome> task = new FutureTask<>(() -> work.read(file));
    Thread thread = new Thread(null, task, "read " + file, STACK_BYTES);
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get(limit.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException late) {
      task.cancel(true);
      return new SheetOutcome.Failed(
          file
              + ": not read within "
              + limit.toSeconds()
              + " seconds and given up; look whether it is a datasheet, and split it if it is long");
    } catch (ExecutionException failure) {
      return new SheetOutcome.Failed(sentence(file, failure.getCause()));
    }
  }

  /** In a batch, a file's name alone may stand for several files; its path does not. */
  private static String sentence(Path file, Throwable cause) {
    if (cause instanceof SheetException expected) {
      String name = file.getFileName().toString();
      return expected
          .getMessage()
          .replaceFirst(Pattern.quote(name), quoteReplacement(file.toString()));
    }
    if (cause instanceof OutOfMemoryError) {
      return file
          + ": does not fit into memory; start with COMMONSHEET_JAVA_OPTIONS=-Xmx4g or split the"
          + " file";
    }
    return file
        + ": reading it failed by a fault of the program ("
        + FaultText.of(cause)
        + "); please report it with the file";
  }
}
