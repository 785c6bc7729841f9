package commonsheet.cli;

import commonsheet.chart.Chart;
import commonsheet.record.CellRecord;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.sheet.Box;
import commonsheet.sheet.Mark;
import commonsheet.sheet.Page;
import commonsheet.sheet.PagePicture;
import commonsheet.sheet.SheetException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The pages of a sheet as pictures, with every statement marked where it stands. */
final class MarkedPages {
  /** Opens the label of an unsure value, so that it can be told from a read one without colour. */
  private static final String UNSURE = "? ";

  private MarkedPages() {}

  /**
   * Draws pages into {@code page-1.png} and so on.
   *
   * @param only the one page to draw, from 1; null for all
   * @return how many were drawn
   */
  static int draw(Path file, SheetOutcome.Read read, Integer only, Path folder)
      throws CommandException {
    int drawn = 0;
    try {
      Files.createDirectories(folder);
      for (Page page : read.sheet().pages()) {
        if (only == null || page.number() == only) {
          Path png = folder.resolve("page-" + page.number() + ".png");
          PagePicture.draw(file, page.number(), page.turned(), marks(read, page.number()), png);
          drawn++;
        }
      }
    } catch (SheetException unreadable) {
      throw new CommandException(ExitStatus.NONE_READABLE, unreadable.getMessage());
    } catch (IOException failure) {
      throw new CommandException(
          ExitStatus.NOT_WRITTEN,
          folder
              + ": the pictures could not be written ("
              + FaultText.of(failure)
              + "); name another folder");
    }
    return drawn;
  }

  /** The charts of a page, then its statements over them. */
  private static List<Mark> marks(SheetOutcome.Read read, int page) {
    List<Mark> marks = new ArrayList<>();
    for (Chart chart : read.charts()) {
      if (chart.page() == page) {
        marks.add(new Mark(chart.box(), ChartLines.inShort(chart), Mark.Tone.STRUCTURE));
      }
    }
    marks.addAll(marks(read.reading().records(), page));
    return marks;
  }

  /** One mark per place; what several statements take from one place stands in one label. */
  private static List<Mark> marks(List<CellRecord> records, int page) {
    Map<List<Double>, Mark> marks = new LinkedHashMap<>();
    for (CellRecord record : records) {
      for (Statement statement : record.statements()) {
        Integer number = statement.evidence().page();
        List<Double> box = statement.evidence().box();
        if (number != null && number == page && box.size() == 4) {
          marks.merge(box, mark(statement, box), MarkedPages::both);
        }
      }
    }
    return List.copyOf(marks.values());
  }

  private static Mark mark(Statement statement, List<Double> box) {
    boolean unsure = statement.standing() == Standing.UNSURE;
    return new Mark(
        new Box(box.get(0), box.get(1), box.get(2), box.get(3)),
        (unsure ? UNSURE : "") + StatementLine.inShort(statement),
        unsure ? Mark.Tone.UNSURE : Mark.Tone.READ);
  }

  private static Mark both(Mark first, Mark second) {
    if (first.label().equals(second.label())) {
      return first;
    }
    boolean unsure = first.tone() == Mark.Tone.UNSURE || second.tone() == Mark.Tone.UNSURE;
    return new Mark(
        first.box(),
        first.label() + "; " + second.label(),
        unsure ? Mark.Tone.UNSURE : Mark.Tone.READ);
  }
}
