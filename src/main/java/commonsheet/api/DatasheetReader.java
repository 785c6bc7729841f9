package commonsheet.api;

import commonsheet.chart.derived.Tracing;
import commonsheet.check.Checks;
import commonsheet.layout.LayoutException;
import commonsheet.layout.LayoutLibrary;
import commonsheet.layout.Reading;
import commonsheet.layout.RecordReader;
import commonsheet.record.CellRecord;
import commonsheet.sheet.KeptWords;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetReader;
import commonsheet.sheet.SheetSettings;
import commonsheet.sheet.ocr.PictureWords;
import java.nio.file.Path;
import java.util.List;

/**
 * Reads datasheets as the command {@code read} does: their words, the curves of their charts, and
 * what the checks say to both. One reader serves any number of sheets, one after another; it is not
 * to be used by two threads at a time.
 */
public final class DatasheetReader {
  private final PictureWords words = new PictureWords();
  private final SheetReader sheets;
  private final Tracing tracing = new Tracing(() -> words);
  private final RecordReader records;

  private DatasheetReader(LayoutLibrary layouts, KeptWords kept) {
    this.sheets = new SheetReader(SheetSettings.defaults(), words).keeping(kept);
    this.records = new RecordReader(layouts);
  }

  /** A reader by the layout rules that come with the program. */
  public static DatasheetReader standard() {
    try {
      return withLayouts(null);
    } catch (LayoutException e) {
      throw new IllegalStateException("the program's own layout rules are damaged", e);
    }
  }

  /**
   * A reader by layout rules of one's own besides those that come with the program.
   *
   * @param folder of rule files (docs/layouts.md); null for none
   * @throws LayoutException where one of them is no valid rule file; names file and line
   */
  public static DatasheetReader withLayouts(Path folder) throws LayoutException {
    return withLayouts(folder, null);
  }

  /**
   * Likewise, keeping what is recognised in pictures from one reading to the next.
   *
   * @param folder of rule files; null for none
   * @param kept where; null for nowhere
   * @throws LayoutException where one of them is no valid rule file; names file and line
   */
  public static DatasheetReader withLayouts(Path folder, KeptWords kept) throws LayoutException {
    return new DatasheetReader(LayoutLibrary.load(folder), kept);
  }

  /**
   * Reads one sheet. There is no limit of time: a long sheet of pictures takes some seconds a page.
   *
   * @return the records, one per cell; where there are none, the reason
   * @throws SheetException where the file cannot be read as a sheet; names it and says what to do
   */
  public Reading read(Path sheet) throws SheetException {
    Sheet pages = sheets.readSheet(sheet);
    Reading reading = records.read(pages);
    List<CellRecord> traced =
        reading.records().isEmpty()
            ? reading.records()
            : Tracing.applied(
                reading.records(), tracing.charts(sheet, pages, reading.records(), null), null);
    Checks checks = Checks.standard();
    return new Reading(
        traced.stream().map(checks::applied).toList(), reading.explanation(), reading.reason());
  }
}
