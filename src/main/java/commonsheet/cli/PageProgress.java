package commonsheet.cli;

import commonsheet.sheet.PageWatch;
import java.io.PrintWriter;

/**
 * Says on a terminal which page is being recognised, on a line that goes away when the sheet is
 * done. Elsewhere it says nothing.
 */
final class PageProgress implements PageWatch {
  /** Set by the launcher where standard error is a terminal, which Java cannot tell. */
  private static final String TERMINAL = "commonsheet.terminal";

  private static final int WIDEST = 79;

  private final PrintWriter err;
  private final boolean terminal;
  private int shown;

  PageProgress(PrintWriter err, boolean terminal) {
    this.err = err;
    this.terminal = terminal;
  }

  static PageProgress on(PrintWriter err) {
    return new PageProgress(err, Boolean.getBoolean(TERMINAL));
  }

  @Override
  public synchronized void recognising(String file, int page, int pages) {
    if (terminal) {
      done();
      String place = ": recognising page " + page + " of " + pages;
      String line = shortened(file, WIDEST - place.length()) + place;
      err.print(line);
      err.flush();
      shown = line.length();
    }
  }

  /** Takes the line away. */
  synchronized void done() {
    if (shown > 0) {
      err.print("\r" + " ".repeat(shown) + "\r");
      err.flush();
      shown = 0;
    }
  }

  private static String shortened(String name, int most) {
    return name.length() <= most ? name : name.substring(0, most - 1) + "\u2026";
  }
}
