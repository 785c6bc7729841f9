package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.export.Caution;
import commonsheet.export.CsvText;
import commonsheet.export.ShortlistWords;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A report as one CSV table (RFC 4180): one row per cell, five columns per figure, the condition
 * and the caution in every row. docs/report.md names the columns.
 */
final class ReportCsv {
  private final List<String> header = new ArrayList<>();
  private final List<Function<ReportedCell, Object>> values = new ArrayList<>();

  private ReportCsv(Report report) {
    column("rank", ReportedCell::rank);
    text("id", cell -> cell.record().id());
    CellTexts.ALL.forEach(column -> text(column.name(), column.text()));
    column("margin", cell -> Numbers.text(cell.contender().margin()));
    for (Measure measure : Measure.values()) {
      figure(measure.label(), measure.unit(), cell -> cell.figure(measure));
    }
    if (report.hasPacks()) {
      for (PackMeasure measure : PackMeasure.values()) {
        figure(measure.label(), measure.unit(), cell -> pack(measure, cell));
      }
    }
    text("condition", cell -> ShortlistWords.condition(report.condition()));
    text("caution", cell -> Caution.TEXT);
  }

  /** Writes the header and one row per cell; lines end with CR LF. */
  static void write(Report report, Appendable out) throws IOException {
    ReportCsv csv = new ReportCsv(report);
    CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
    printer.printRecord(csv.header);
    for (ReportedCell cell : report.cells()) {
      printer.printRecord(csv.values.stream().map(value -> value.apply(cell)));
    }
    printer.flush();
  }

  private void figure(String label, String unit, Function<ReportedCell, Figure> figure) {
    String name = snake(label);
    String suffix = '_' + Unit.of(unit).suffix();
    column(name + suffix, cell -> Numbers.text(figure.apply(cell).value()));
    column(name + "_low" + suffix, cell -> Numbers.text(figure.apply(cell).low()));
    column(name + "_high" + suffix, cell -> Numbers.text(figure.apply(cell).high()));
    column(name + "_origin", cell -> figure.apply(cell).origin().label());
    column(name + "_unsure", cell -> figure.apply(cell).unsure());
    text(name + "_notes", cell -> String.join("; ", figure.apply(cell).notes()));
  }

  private static Figure pack(PackMeasure measure, ReportedCell cell) {
    return cell.contender().pack() == null
        ? Figure.absent("no machine is given")
        : measure.of(cell.contender().pack());
  }

  private void text(String name, Function<ReportedCell, String> text) {
    column(name, cell -> CsvText.of(text.apply(cell)));
  }

  private void column(String name, Function<ReportedCell, Object> value) {
    header.add(name);
    values.add(value);
  }

  /** {@code deliveredEnergy} as {@code delivered_energy}. */
  private static String snake(String label) {
    return label.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }
}
