package commonsheet.cli;

import commonsheet.chart.overlay.CurvesOnPage;
import commonsheet.chart.overlay.Figure;
import commonsheet.record.AtomicFile;
import commonsheet.record.CellRecord;
import commonsheet.sheet.ChartPicture;
import commonsheet.sheet.OpenSheet;
import commonsheet.sheet.SheetException;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** The pictures beside a record: each chart as the sheet shows it, with its curves laid over it. */
final class ChartPictures {
  private ChartPictures() {}

  /**
   * Draws the charts of a sheet into {@code ID-page-1-chart-1.png} and so on. Pictures that this
   * program drew for the same record before and that are not drawn again are deleted.
   *
   * @param page the only page that was looked at, from 1; null for all
   * @return how many pictures there are
   */
  static int draw(Path sheet, CellRecord record, List<Figure> figures, Path folder, Integer page)
      throws CommandException {
    Set<String> names = new HashSet<>();
    if (!figures.isEmpty()) {
      draw(sheet, record, figures, folder, names);
    }
    deleteOthers(record.id(), names, folder, page);
    return figures.size();
  }

  private static void draw(
      Path sheet, CellRecord record, List<Figure> figures, Path folder, Set<String> names)
      throws CommandException {
    Map<Integer, Integer> onPage = new HashMap<>();
    try (OpenSheet open = OpenSheet.open(sheet)) {
      for (Figure figure : figures) {
        int number = onPage.merge(figure.page(), 1, Integer::sum);
        String name = record.id() + "-page-" + figure.page() + "-chart-" + number + ".png";
        names.add(name);
        AtomicFile.write(folder.resolve(name), PictureMark.on(picture(open, figure), record.id()));
      }
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

  /** What cannot be deleted stays: it harms nothing but the order. */
  private static void deleteOthers(String id, Set<String> names, Path folder, Integer page) {
    Pattern own =
        Pattern.compile(
            Pattern.quote(id)
                + "-page-"
                + (page == null ? "[0-9]+" : page)
                + "-chart-[0-9]+\\.png");
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.png")) {
      for (Path file : files) {
        String name = file.getFileName().toString();
        if (own.matcher(name).matches() && !names.contains(name) && PictureMark.isOn(file, id)) {
          Files.deleteIfExists(file);
        }
      }
    } catch (IOException | DirectoryIteratorException kept) {
      // Nothing is wrong with the record or its new pictures.
      return;
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
