package commonsheet.cli;

import commonsheet.compare.Shortlist;
import commonsheet.export.TerminalShortlist;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** The forms a shortlist can take. */
enum ShortlistFormat {
  TERMINAL;

  /** The format a file's ending asks for; plain text for any other, and for none. */
  static ShortlistFormat of(Path file) {
    return TERMINAL;
  }

  /** Prints the shortlist, or writes it to a file where one is given. */
  void give(Shortlist shortlist, Path file, PrintWriter out) throws CommandException {
    if (file == null) {
      out.print(text(shortlist, TerminalWidth.columns().orElse(TerminalWidth.USUAL)));
      out.flush();
    } else {
      ResultFile.write(file, text(shortlist, TerminalWidth.USUAL));
    }
  }

  private static String text(Shortlist shortlist, int width) {
    StringWriter text = new StringWriter();
    try {
      TerminalShortlist.write(shortlist, width, text);
    } catch (IOException impossible) {
      throw new UncheckedIOException("writing to memory does not fail", impossible);
    }
    return text.toString();
  }
}
