package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.sheet.SheetException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class TimedReaderTest {
  private static final Path FILE = Path.of("sheets", "tl-25.pdf");

  @Test
  void aSheetThatTakesTooLongIsGivenUpAndInterrupted() throws InterruptedException {
    CountDownLatch interrupted = new CountDownLatch(1);
    TimedReader reader =
        new TimedReader(
            file -> {
              try {
                new CountDownLatch(1).await();
              } catch (InterruptedException expected) {
                interrupted.countDown();
              }
              return null;
            },
            Duration.ofMillis(20));
    assertTrue(sentence(reader).startsWith(FILE + ": not read within"), sentence(reader));
    interrupted.await();
  }

  @Test
  void aLackOfMemoryIsTheSheetsOwn() throws InterruptedException {
    TimedReader reader = failing(new OutOfMemoryError("Java heap space"));
    assertTrue(sentence(reader).startsWith(FILE + ": does not fit into memory"));
  }

  @Test
  void aFaultIsNamedInOneLine() throws InterruptedException {
    String sentence = sentence(failing(new IllegalStateException("two\nlines")));
    assertTrue(sentence.contains("IllegalStateException: two lines"), sentence);
    assertEquals(1, sentence.lines().count());
  }

  @Test
  void whatTheSheetPackageSaysIsSaidWithTheFilesPath() throws InterruptedException {
    TimedReader reader =
        new TimedReader(
            file -> {
              throw new SheetException(SheetException.Kind.NO_PAGES, "tl-25.pdf has no pages.");
            },
            Duration.ofMinutes(1));
    assertEquals(FILE + " has no pages.", sentence(reader));
  }

  private static TimedReader failing(Throwable fault) {
    return new TimedReader(
        file -> {
          if (fault instanceof Error error) {
            throw error;
          }
          throw (RuntimeException) fault;
        },
        Duration.ofMinutes(1));
  }

  private static String sentence(TimedReader reader) throws InterruptedException {
    return assertInstanceOf(SheetOutcome.Failed.class, reader.read(FILE)).sentence();
  }
}
