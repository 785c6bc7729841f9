package commonsheet.cli;

import commonsheet.api.TimeLimit;
import commonsheet.chart.Chart;
import commonsheet.chart.derived.Tracing;
import commonsheet.record.CellRecord;
import commonsheet.sheet.KeptWords;
import commonsheet.sheet.Recogniser;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.ocr.PictureWords;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/**
 * Looks for the charts of sheets one by one, so that none can hold up a batch. What goes wrong with
 * the charts of a sheet takes nothing from what its words say.
 */
final class TimedTracer {
  /** A chart takes two seconds at most, so a sheet of twenty is far below this. */
  private static final Duration LIMIT = Duration.ofSeconds(60);

  /** How the charts of one sheet are found. */
  @FunctionalInterface
  interface Work {
    List<Chart> charts(Path file, Sheet sheet, List<CellRecord> records, Integer page)
        throws Exception;
  }

  private final Work work;
  private final Duration limit;

  TimedTracer(Work work, Duration limit) {
    this.work = work;
    this.limit = limit;
  }

  /** A tracer that recognises words in pictures where it has to, loading what that takes once. */
  static TimedTracer by(Recognition recognition) {
    KeptWords kept = recognition.kept();
    Supplier<Recogniser> words = () -> kept == null ? words() : kept.before(words());
    return new TimedTracer(new Tracing(words)::charts, LIMIT);
  }

  /** Loads its networks at the first picture; one for all sheets, their pages and charts. */
  static PictureWords words() {
    return Words.OF_PICTURES;
  }

  private static final class Words {
    private static final PictureWords OF_PICTURES = new PictureWords();
  }

  /**
   * What came of the charts of a sheet.
   *
   * @param problem why they could not be looked at, the end of a sentence; null where they were
   */
  record Outcome(List<Chart> charts, String problem) {}

  /**
   * The charts of a sheet.
   *
   * @param page the only page to look at, from 1; null for all
   */
  Outcome charts(Path file, Sheet sheet, List<CellRecord> records, Integer page)
      throws InterruptedException {
    try {
      return new Outcome(
          new TimeLimit(limit)
              .call("charts of " + file, () -> work.charts(file, sheet, records, page)),
          null);
    } catch (TimeoutException late) {
      return failed("they took more than " + limit.toSeconds() + " seconds");
    } catch (ExecutionException failure) {
      Throwable cause = failure.getCause();
      return failed(
          cause instanceof OutOfMemoryError
              ? "they do not fit into memory; start with COMMONSHEET_JAVA_OPTIONS=-Xmx4g"
              : "a fault of the program (" + FaultText.of(cause) + "); please report it");
    }
  }

  private static Outcome failed(String problem) {
    return new Outcome(List.of(), problem);
  }
}
