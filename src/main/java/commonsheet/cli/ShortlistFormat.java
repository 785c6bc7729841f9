package commonsheet.cli;

import commonsheet.compare.Shortlist;
import commonsheet.export.TerminalShortlist;
import commonsheet.export.report.Report;
import commonsheet.export.report.ReportFormat;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The forms a shortlist can take. */
enum ShortlistFormat {
  TERMINAL(null),
  CSV(ReportFormat.CSV),
  JSON(ReportFormat.JSON),
  MARKDOWN(ReportFormat.MARKDOWN),
  HTML(ReportFormat.HTML),
  XLSX(ReportFormat.XLSX),
  DATA_PACKAGE(ReportFormat.DATA_PACKAGE),
  SVG(ReportFormat.SVG);

  private final ReportFormat report;

  ShortlistFormat(ReportFormat report) {
    this.report = report;
  }

  /**
   * The format a file's ending asks for: a data package for {@code .zip} and for a folder; plain
   * text for any other, and for none.
   */
  static ShortlistFormat of(Path file) {
    if (file == null) {
      return TERMINAL;
    }
    if (ReportFiles.isArchive(file) || Files.isDirectory(file)) {
      return DATA_PACKAGE;
    }
    Optional<ReportFormat> asked = ReportFormat.of(file);
    return asked.isPresent() ? valueOf(asked.get().name()) : TERMINAL;
  }

  /** As it is given to {@code --format}. */
  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Refuses what cannot be given; before any cell is compared. */
  void check(Path file) throws CommandException {
    boolean several = report != null && report.isFolder();
    if (file == null && report != null && (several || !report.isText())) {
      throw new CommandException(
          ExitStatus.USAGE,
          "--format "
              + this
              + " needs --out "
              + (several ? "and a folder, or a file ending in .zip" : "and a file"));
    }
    if (several && Files.exists(file) && !Files.isDirectory(file) && !ReportFiles.isArchive(file)) {
      throw new CommandException(
          ExitStatus.USAGE,
          file + " is a file, and --format " + this + " needs a folder, or a file ending in .zip");
    }
    if (file != null && !several && Files.isDirectory(file)) {
      throw new CommandException(
          ExitStatus.USAGE, file + " is a folder, and --format " + this + " needs a file");
    }
  }

  /** Prints the shortlist, or writes it to a file or folder where one is given. */
  void give(Shortlist shortlist, String licence, Path file, PrintWriter out)
      throws CommandException {
    if (report == null) {
      text(shortlist, file, out);
      return;
    }
    Report content = Report.of(shortlist).licensed(licence);
    if (file == null) {
      out.print(report.text(content));
      out.flush();
      return;
    }
    Map<String, byte[]> files = report.files(content);
    if (report.isFolder()) {
      ReportFiles.write(file, files);
    } else {
      ResultFile.write(file, files.values().iterator().next());
    }
  }

  private static void text(Shortlist shortlist, Path file, PrintWriter out)
      throws CommandException {
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
