package commonsheet.cli;

import commonsheet.export.ComparisonTable;
import commonsheet.export.CsvComparison;
import commonsheet.export.MarkdownComparison;
import commonsheet.export.TextComparison;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Locale;

/** The forms a comparison can take. */
enum TableFormat {
  TERMINAL,
  CSV,
  MARKDOWN;

  /** The format a file's ending asks for; plain text for any other. */
  static TableFormat of(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    if (name.endsWith(".csv")) {
      return CSV;
    }
    return name.endsWith(".md") ? MARKDOWN : TERMINAL;
  }

  /** Prints a table for whoever sits at the terminal, as wide as that is. */
  void print(ComparisonTable table, PrintWriter out) {
    out.print(text(table, TerminalWidth.columns().orElse(TerminalWidth.USUAL)));
    out.flush();
  }

  /** Writes a table to a file. */
  void write(ComparisonTable table, Path file) throws CommandException {
    ResultFile.write(file, text(table, TerminalWidth.USUAL));
  }

  private String text(ComparisonTable table, int width) {
    StringWriter text = new StringWriter();
    try {
      switch (this) {
        case TERMINAL -> TextComparison.write(table, width, text);
        case CSV -> CsvComparison.write(table, text);
        case MARKDOWN -> MarkdownComparison.write(table, text);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException("writing to memory does not fail", impossible);
    }
    return text.toString();
  }
}
