package commonsheet.cli;

import commonsheet.chart.overlay.CurvesOnPage;
import commonsheet.chart.overlay.Figure;
import commonsheet.record.AtomicFile;
import commonsheet.record.CellRecord;
import commonsheet.sheet.ChartPicture;
import commonsheet.sheet.OpenSheet;
import commonsheet.sheet.SheetException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The pictures beside a record: each chart as the sheet shows it, with its curves laid over it. */
final class ChartPictures {
  private ChartPictures() {}

  /**
   * Draws the charts of a sheet into {@code ID-page-1-chart-1.png} and so on.
   *
   * @return how many pictures there are
   */
  static int draw(Path sheet, CellRecord record, List<Figure> figures, Path folder)
      throws CommandException {
    if (figures.isEmpty()) {
      return 0;
    }
    Map<Integer, Integer> onPage = new HashMap<>();
    try (OpenSheet open = OpenSheet.open(sheet)) {
      for (Figure figure : figures) {
        int number = onPage.merge(figure.page(), 1, Integer::sum);
        String name = record.id() + "-page-" + figure.page() + "-chart-" + number + ".png";
        AtomicFile.write(folder.resolve(name), picture(open, figure));
      }
      return figures.size();
    } catch (SheetException unreadable) {
      throw new CommandException(ExitStatus.NONE_READABLE, unreadable.getMessage());
    } catch (IOException failure) {
      throw new CommandException(
          ExitStatus.NOT_WRITTEN,
          folder
              + ": the pictures of the charts could not be written ("
              + FaultText.of(failure)
              + "); name another folder");
    }
  }

  private static byte[] picture(OpenSheet open, Figure figure) throws SheetException {
    return ChartPicture.draw(
        open,
        figure.page(),
        figure.box(),
        CurvesOnPage.ticks(figure.curves(), figure.box()),
        figure.curves().stream().map(CurvesOnPage::mark).toList(),
        "page " + figure.page() + ", " + figure.kind());
  }
}
