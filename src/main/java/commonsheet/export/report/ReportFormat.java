package commonsheet.export.report;

import commonsheet.export.plot.PlotSvg;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The forms of a report. */
public enum ReportFormat {
  CSV(".csv"),
  JSON(".json"),
  MARKDOWN(".md"),
  HTML(".html"),
  XLSX(".xlsx"),
  /** Several files: tables, charts and datapackage.json. */
  DATA_PACKAGE(null),
  /** Several files: one per chart. */
  SVG(null);

  private final String ending;

  ReportFormat(String ending) {
    this.ending = ending;
  }

  /** The format that a file's ending asks for; nothing for one that says nothing. */
  public static Optional<ReportFormat> of(Path file) {
    String name = file.getFileName() == null ? "" : file.getFileName().toString();
    return Stream.of(values())
        .filter(f -> f.ending != null && name.toLowerCase(Locale.ROOT).endsWith(f.ending))
        .findFirst();
  }

  /** Its name in options, such as {@code data-package}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether it takes a folder rather than a file. */
  public boolean isFolder() {
    return ending == null;
  }

  /** Whether it can be printed on a terminal. */
  public boolean isText() {
    return ending != null && this != XLSX;
  }

  /**
   * The files of a report by their paths, with slashes; one file only unless {@link #isFolder}.
   * Texts are in UTF-8.
   */
  public Map<String, byte[]> files(Report report) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    switch (this) {
      case DATA_PACKAGE ->
          DataPackage.files(report).forEach((path, text) -> files.put(path, bytes(text)));
      case SVG ->
          new ReportCharts(report)
              .files()
              .forEach(plot -> files.put(plot.id() + ".svg", bytes(PlotSvg.file(plot))));
      case XLSX -> files.put("comparison" + ending, workbook(report));
      default -> files.put("comparison" + ending, bytes(text(report)));
    }
    return files;
  }

  /**
   * The text of a report in one of the forms that are one text.
   *
   * @throws IllegalStateException for another form
   */
  public String text(Report report) {
    return switch (this) {
      case CSV -> csv(report);
      case JSON -> ReportJson.of(report);
      case MARKDOWN -> ReportMarkdown.of(report);
      case HTML -> ReportPage.of(report);
      default -> throw new IllegalStateException(label() + " is not one text");
    };
  }

  private static String csv(Report report) {
    StringBuilder out = new StringBuilder();
    try {
      ReportCsv.write(report, out);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory does not fail", e);
    }
    return out.toString();
  }

  private static byte[] workbook(Report report) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ReportWorkbook.write(report, out);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory does not fail", e);
    }
    return out.toByteArray();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
