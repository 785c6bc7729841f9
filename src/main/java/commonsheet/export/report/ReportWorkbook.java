package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.export.Caution;
import commonsheet.export.Printed;
import commonsheet.export.ShortlistWords;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.PaperSize;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * A report as a workbook (Office Open XML): a sheet of figures, one of all packs together where a
 * machine is given, and one of sources and notes. Texts are never formulas.
 */
final class ReportWorkbook {
  private static final String HEAD_FILL = "E8EEF2";
  private static final int TITLE_ROWS = 4;

  /** Pages that the tables of figures take side by side on paper, so that they stay legible. */
  static final int WIDE_PAGES = 3;

  /** In characters; the first column holds sentences too, which are to run over the next. */
  private static final int RANK_WIDTH = 6;

  static final int NAME_WIDTH = 34;
  static final int FIGURE_WIDTH = 11;
  private static final int TITLE_COLUMNS = 13;
  private static final int NOTE_WIDTH = 24;

  private final Report report;
  private final List<Measure> measures;

  private ReportWorkbook(Report report) {
    this.report = report;
    measures = report.measures();
  }

  static void write(Report report, OutputStream out) throws IOException {
    Workbook workbook = new Workbook(out, "Commonsheet", null);
    ReportWorkbook content = new ReportWorkbook(report);
    content.comparison(workbook.newWorksheet("Comparison"));
    if (report.hasPacks()) {
      WorkbookPacks.write(report, workbook.newWorksheet("Packs"));
    }
    content.sources(workbook.newWorksheet("Sources and notes"));
    workbook.finish();
  }

  private void comparison(Worksheet sheet) {
    title(sheet);
    List<String> heads = new ArrayList<>(List.of("Rank", "Cell", "Verdict", "Margin"));
    for (Measure measure : measures) {
      heads.add(measure.title() + ", " + Unit.shown(measure.unit()));
      heads.add("Low");
      heads.add("High");
      heads.add("Origin");
    }
    heads.add("State of approval");
    head(sheet, TITLE_ROWS, heads);
    int row = TITLE_ROWS + 1;
    for (ReportedCell cell : report.cells()) {
      row(sheet, row++, cell);
    }
    sheet.freezePane(2, TITLE_ROWS + 1);
    sheet.width(1, NAME_WIDTH);
    for (int column = 2; column < heads.size(); column++) {
      sheet.width(column, FIGURE_WIDTH);
    }
    printed(sheet, WIDE_PAGES);
    sheet.repeatCols(0, 1);
    sheet.repeatRows(TITLE_ROWS);
  }

  private void title(Worksheet sheet) {
    line(sheet, 0, "Cells at " + ShortlistWords.condition(report.condition()), 20);
    sheet.style(0, 0).bold().fontSize(14).set();
    line(
        sheet,
        1,
        String.join(" ", ShortlistWords.asked(report.shortlist()))
            + ' '
            + ShortlistWords.outcome(report.shortlist()),
        48);
    sheet.style(1, 0).wrapText(true).verticalAlignment("top").set();
    line(sheet, 2, Caution.TEXT, 32);
    sheet.style(2, 0).italic().wrapText(true).verticalAlignment("top").set();
  }

  /** A text over several columns, in a row of so many points. */
  static void line(Worksheet sheet, int row, String text, double height) {
    sheet.value(row, 0, text);
    sheet.range(row, 0, row, TITLE_COLUMNS).merge();
    sheet.rowHeight(row, height);
  }

  static void head(Worksheet sheet, int row, List<String> heads) {
    for (int column = 0; column < heads.size(); column++) {
      sheet.value(row, column, heads.get(column));
      sheet.style(row, column).bold().wrapText(true).fillColor(HEAD_FILL).set();
    }
  }

  private void row(Worksheet sheet, int row, ReportedCell cell) {
    sheet.value(row, 0, cell.rank());
    sheet.value(row, 1, cell.name());
    sheet.value(row, 2, cell.contender().verdict().label());
    if (cell.contender().margin() != null) {
      sheet.value(row, 3, cell.contender().margin());
      sheet.style(row, 3).format("+0%;-0%;0%").set();
    }
    int column = 4;
    for (Measure measure : measures) {
      Figure figure = cell.figure(measure);
      String format = format(figure);
      number(sheet, row, column, figure.value(), format);
      number(sheet, row, column + 1, figure.low(), format);
      number(sheet, row, column + 2, figure.high(), format);
      sheet.value(row, column + 3, figure.origin().label() + (figure.unsure() ? " ?" : ""));
      column += 4;
    }
    sheet.value(row, column, SheetUsed.approval(cell));
  }

  static void number(Worksheet sheet, int row, int column, Double value, String format) {
    if (value != null) {
      sheet.value(row, column, value);
      sheet.style(row, column).format(format).set();
    }
  }

  /** As many decimals as the figure is shown with to people; one more for a bound. */
  static String format(Figure figure) {
    int decimals = FigureWords.decimals(figure) + (figure.isKnown() ? 0 : 1);
    return decimals == 0 ? "0" : "0." + "0".repeat(decimals);
  }

  private void sources(Worksheet sheet) {
    head(
        sheet,
        0,
        List.of("Rank", "Cell", "Sheet", "Document", "Revision", "Date", "Pages", "State"));
    int row = 1;
    for (ReportedCell cell : report.cells()) {
      SheetUsed source = SheetUsed.of(cell);
      sheet.value(row, 0, cell.rank());
      texts(
          sheet,
          row++,
          List.of(
              cell.name(),
              source.file(),
              source.document(),
              source.revision(),
              source.date(),
              source.pageList(),
              SheetUsed.approval(cell)));
    }
    row = notes(sheet, row + 1);
    sheet.value(row + 1, 0, Caution.TEXT);
    sheet.style(row + 1, 0).italic().set();
    sheet.freezePane(0, 1);
    sheet.width(0, RANK_WIDTH);
    sheet.width(1, NAME_WIDTH);
    sheet.width(2, NAME_WIDTH);
    sheet.width(3, NAME_WIDTH);
    sheet.width(4, NOTE_WIDTH);
    printed(sheet, 1);
  }

  /** The reasons and the notes of every figure, and then the row after them. */
  private int notes(Worksheet sheet, int start) {
    head(sheet, start, List.of("Rank", "Cell", "About", "Origin", "Note"));
    int row = start + 1;
    for (ReportedCell cell : report.cells()) {
      note(sheet, row++, cell, List.of("Verdict", "", cell.contender().reason()));
      for (Measure measure : Measure.values()) {
        Figure figure = cell.figure(measure);
        for (String note : figure.notes()) {
          note(sheet, row++, cell, List.of(measure.title(), figure.origin().label(), note));
        }
      }
      row = WorkbookPacks.notes(cell, sheet, row);
    }
    for (String remark : report.shortlist().remarks()) {
      texts(sheet, row++, List.of("", "All", "", Printed.clean(remark)));
    }
    return row;
  }

  static void note(Worksheet sheet, int row, ReportedCell cell, List<String> words) {
    sheet.value(row, 0, cell.rank());
    List<String> texts = new ArrayList<>(List.of(cell.name()));
    texts.addAll(words);
    texts(sheet, row, texts);
  }

  private static void texts(Worksheet sheet, int row, List<String> texts) {
    for (int i = 0; i < texts.size(); i++) {
      String text = Printed.clean(texts.get(i));
      if (!text.isEmpty()) {
        sheet.value(row, i + 1, text);
      }
    }
  }

  /** As it comes out of a printer: so many pages side by side, and as many below as it takes. */
  static void printed(Worksheet sheet, int wide) {
    sheet.pageOrientation("landscape");
    sheet.paperSize(PaperSize.A4_PAPER);
    sheet.setFitToPage(true);
    sheet.fitToWidth((short) wide);
    sheet.fitToHeight((short) 0);
  }
}
