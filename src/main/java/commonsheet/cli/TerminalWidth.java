package commonsheet.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How wide the terminal is. */
final class TerminalWidth {
  /** Columns of a plain text file, and of a terminal that does not tell. */
  static final int USUAL = 100;

  private static final Pattern ROWS_AND_COLUMNS = Pattern.compile("\\d+ (\\d+)\\s*");
  private static final Pattern NUMBER = Pattern.compile("[1-9]\\d{0,3}");

  private TerminalWidth() {}

  /** By the variable COLUMNS, else by the terminal itself; empty where nobody sits at one. */
  @SuppressWarnings("SystemConsoleNull") // from Java 22 on, stty alone tells
  static OptionalInt columns() {
    String variable = System.getenv("COLUMNS");
    if (variable != null && NUMBER.matcher(variable).matches()) {
      return OptionalInt.of(Integer.parseInt(variable));
    }
    return System.console() == null ? OptionalInt.empty() : askTerminal();
  }

  private static OptionalInt askTerminal() {
    try {
      Process stty =
          new ProcessBuilder("stty", "size").redirectInput(ProcessBuilder.Redirect.INHERIT).start();
      if (!stty.waitFor(1, TimeUnit.SECONDS)) {
        stty.destroyForcibly();
        return OptionalInt.empty();
      }
      String answer = new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
      Matcher size = ROWS_AND_COLUMNS.matcher(answer);
      return size.matches() && NUMBER.matcher(size.group(1)).matches()
          ? OptionalInt.of(Integer.parseInt(size.group(1)))
          : OptionalInt.empty();
    } catch (IOException systemWithoutStty) {
      return OptionalInt.empty();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      return OptionalInt.empty();
    }
  }
}
