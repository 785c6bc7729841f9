package commonsheet.cli;

import static java.util.regex.Matcher.quoteReplacement;

import commonsheet.api.TimeLimit;
import commonsheet.chart.derived.Tracing;
import commonsheet.check.Checks;
import commonsheet.layout.Reading;
import commonsheet.layout.RecordReader;
import commonsheet.record.CellRecord;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetReader;
import commonsheet.sheet.SheetSettings;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.ExecutionException;
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

  /** How one sheet is read. */
  @FunctionalInterface
  interface Work {
    SheetOutcome.Read read(Path file) throws SheetException, InterruptedException;
  }

  private final Work work;
  private final Duration limit;
  private final TimedTracer tracer;
  private final PageProgress progress;

  TimedReader(Work work, Duration limit) {
    this(work, limit, null, null);
  }

  private TimedReader(Work work, Duration limit, TimedTracer tracer, PageProgress progress) {
    this.work = work;
    this.limit = limit;
    this.tracer = tracer;
    this.progress = progress;
  }

  /** A reader that also puts the curves of the charts into the records. */
  TimedReader tracing(TimedTracer charts) {
    return new TimedReader(work, limit, charts, progress);
  }

  /**
   * A reader that finds values by layout rules, the built-in ones and those of a folder. The rules
   * load while the words of the first sheet are taken from their file.
   *
   * @param layouts null for the built-in rules only
   * @param recognition of words in pictures
   * @param progress is told the pages on which words are recognised
   * @throws CommandException for a folder or rule file that is not as it should be
   */
  static TimedReader by(Path layouts, Recognition recognition, PageProgress progress)
      throws CommandException {
    Ahead<RecordReader> records = Layouts.reader(layouts);
    SheetReader sheets =
        new SheetReader(SheetSettings.defaults(), TimedTracer.words())
            .keeping(recognition.kept())
            .watchedBy(progress);
    return new TimedReader(
        file -> {
          Sheet sheet = sheets.readSheet(file);
          return new SheetOutcome.Read(sheet, checked(records.get().read(sheet)));
        },
        LIMIT,
        null,
        progress);
  }

  private static Reading checked(Reading reading) {
    Checks checks = Checks.standard();
    return new Reading(
        reading.records().stream().map(checks::applied).toList(),
        reading.explanation(),
        reading.reason());
  }

  /** Reads one sheet. */
  SheetOutcome read(Path file) throws InterruptedException {
    try {
      SheetOutcome.Read read = words(file);
      return tracer == null || read.reading().records().isEmpty() ? read : traced(file, read);
    } catch (TimeoutException late) {
      return new SheetOutcome.Failed(
          file
              + ": not read within "
              + limit.toSeconds()
              + " seconds and given up; look whether it is a datasheet, and split it if it is"
              + " long");
    } catch (ExecutionException failure) {
      return new SheetOutcome.Failed(sentence(file, failure.getCause()));
    }
  }

  private SheetOutcome.Read words(Path file)
      throws InterruptedException, TimeoutException, ExecutionException {
    try {
      return new TimeLimit(limit).call("read " + file, () -> work.read(file));
    } finally {
      if (progress != null) {
        progress.done();
      }
    }
  }

  private SheetOutcome.Read traced(Path file, SheetOutcome.Read read) throws InterruptedException {
    Reading reading = read.reading();
    if (read.sheet().pages().stream().noneMatch(Page::mayShowChart)) {
      return read;
    }
    TimedTracer.Outcome outcome = tracer.charts(file, read.sheet(), reading.records(), null);
    List<CellRecord> records =
        outcome.problem() == null
            ? Tracing.applied(reading.records(), outcome.charts(), null)
            : Tracing.failed(reading.records(), outcome.problem());
    return new SheetOutcome.Read(
        read.sheet(),
        checked(new Reading(records, reading.explanation(), reading.reason())),
        outcome.charts(),
        outcome.problem());
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
