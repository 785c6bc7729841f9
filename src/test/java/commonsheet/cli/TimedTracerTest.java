package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.sheet.Sheet;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

/** What goes wrong with charts is the end of a sentence and takes nothing from the rest. */
class TimedTracerTest {
  private static final Path FILE = Path.of("tl-25.pdf");
  private static final Sheet SHEET = new Sheet("tl-25.pdf", "0".repeat(64), null, List.of());

  @Test
  void chartsThatTakeTooLongAreGivenUp() throws InterruptedException {
    TimedTracer.Outcome outcome =
        charts(
            (file, sheet, records, page) -> {
              new CountDownLatch(1).await();
              return List.of();
            },
            Duration.ofMillis(20));
    assertTrue(outcome.problem().startsWith("they took more than"), outcome.problem());
    assertEquals(List.of(), outcome.charts());
  }

  @Test
  void aFaultIsNamedAndALackOfMemoryToo() throws InterruptedException {
    TimedTracer.Outcome fault =
        charts(
            (file, sheet, records, page) -> {
              throw new IllegalStateException("no such tick");
            },
            Duration.ofMinutes(1));
    assertEquals(
        "a fault of the program (IllegalStateException: no such tick); please report it",
        fault.problem());
    TimedTracer.Outcome memory =
        charts(
            (file, sheet, records, page) -> {
              throw new OutOfMemoryError("Java heap space");
            },
            Duration.ofMinutes(1));
    assertTrue(memory.problem().startsWith("they do not fit into memory"), memory.problem());
  }

  @Test
  void chartsThatAreFoundComeWithoutAProblem() throws InterruptedException {
    assertNull(charts((file, sheet, records, page) -> List.of(), Duration.ofMinutes(1)).problem());
  }

  private static TimedTracer.Outcome charts(TimedTracer.Work work, Duration limit)
      throws InterruptedException {
    return new TimedTracer(work, limit).charts(FILE, SHEET, List.of(), null);
  }
}
