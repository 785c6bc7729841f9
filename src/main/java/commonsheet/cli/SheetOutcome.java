package commonsheet.cli;

import commonsheet.chart.Chart;
import commonsheet.layout.Reading;
import commonsheet.sheet.PageKind;
import commonsheet.sheet.Sheet;
import java.util.List;

/** What came of one sheet. */
sealed interface SheetOutcome {
  /**
   * The sheet was read; there are no records where it describes no cell.
   *
   * @param charts the charts that were found; none where they were not looked for
   * @param untraced why charts could not be looked at, the end of a sentence; null where they were,
   *     or were not asked for
   */
  record Read(Sheet sheet, Reading reading, List<Chart> charts, String untraced)
      implements SheetOutcome {
    /** A sheet whose charts were not looked for. */
    Read(Sheet sheet, Reading reading) {
      this(sheet, reading, List.of(), null);
    }

    /** The numbers of the pages of a kind. */
    List<Integer> pages(PageKind kind) {
      return sheet.pages().stream()
          .filter(page -> page.kind() == kind)
          .map(page -> page.number())
          .toList();
    }

    /** Whether there is nothing but pictures on the pages that are not blank. */
    boolean isPictures() {
      return !pages(PageKind.PICTURE).isEmpty()
          && pages(PageKind.PICTURE).size() + pages(PageKind.BLANK).size() == sheet.pages().size();
    }
  }

  /** The sheet could not be read, for the reason that the sentence gives. */
  record Failed(String sentence) implements SheetOutcome {}
}
