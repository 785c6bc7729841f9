package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.export.Caution;
import commonsheet.export.ShortlistWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.dhatim.fastexcel.Worksheet;

/** The sheet of a workbook with all packs of a machine together, by the cell they are built of. */
final class WorkbookPacks {
  private static final int HEAD_ROW = 3;

  /** A spreadsheet shows a share in percent, and computes with the share. */
  private static final String SHARE = "0.0%";

  private WorkbookPacks() {}

  static void write(Report report, Worksheet sheet) {
    ReportWorkbook.line(sheet, 0, ShortlistWords.together(report.shortlist()), 20);
    sheet.style(0, 0).bold().set();
    ReportWorkbook.line(sheet, 1, Caution.TEXT, 32);
    sheet.style(1, 0).italic().wrapText(true).verticalAlignment("top").set();
    ReportedPacks packs = ReportedPacks.of(report);
    List<String> heads = new ArrayList<>(List.of("Rank", "Packs of", "Verdict"));
    for (PackMeasure measure : packs.measures()) {
      heads.addAll(List.of(ReportedPacks.head(measure), "Low", "High", "Origin"));
    }
    ReportWorkbook.head(sheet, HEAD_ROW, heads);
    int row = HEAD_ROW + 1;
    for (ReportedCell cell : packs.cells()) {
      row(sheet, row++, cell, packs.measures());
    }
    sheet.freezePane(2, HEAD_ROW + 1);
    sheet.width(1, ReportWorkbook.NAME_WIDTH);
    for (int column = 2; column < heads.size(); column++) {
      sheet.width(column, ReportWorkbook.FIGURE_WIDTH);
    }
    ReportWorkbook.printed(sheet, ReportWorkbook.WIDE_PAGES);
    sheet.repeatCols(0, 1);
    sheet.repeatRows(HEAD_ROW);
  }

  private static void row(Worksheet sheet, int row, ReportedCell cell, List<PackMeasure> measures) {
    sheet.value(row, 0, cell.rank());
    sheet.value(row, 1, cell.name());
    sheet.value(row, 2, cell.contender().verdict().label());
    int column = 3;
    for (PackMeasure measure : measures) {
      Figure figure = measure.of(cell.contender().pack());
      String format = measure.isShare() ? SHARE : ReportWorkbook.format(figure);
      ReportWorkbook.number(sheet, row, column, figure.value(), format);
      ReportWorkbook.number(sheet, row, column + 1, figure.low(), format);
      ReportWorkbook.number(sheet, row, column + 2, figure.high(), format);
      sheet.value(row, column + 3, figure.origin().label() + (figure.unsure() ? " ?" : ""));
      column += 4;
    }
  }

  /** What is said of packs and not of the cell itself, from a row on; the row after it. */
  static int notes(ReportedCell cell, Worksheet sheet, int start) {
    if (cell.contender().pack() == null) {
      return start;
    }
    Set<String> said = new LinkedHashSet<>();
    for (Measure measure : Measure.values()) {
      said.addAll(cell.figure(measure).notes());
    }
    int row = start;
    for (PackMeasure measure : PackMeasure.values()) {
      Figure figure = measure.of(cell.contender().pack());
      for (String note : figure.notes()) {
        if (!said.contains(note)) {
          ReportWorkbook.note(
              sheet,
              row++,
              cell,
              List.of("Packs: " + measure.title(), figure.origin().label(), note));
        }
      }
    }
    return row;
  }
}
