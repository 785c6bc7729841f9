package commonsheet.chart;

import commonsheet.chart.axis.AxesReader;
import commonsheet.chart.bitmap.BitmapPlots;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.vector.VectorPlots;
import commonsheet.sheet.Box;
import commonsheet.sheet.OpenSheet;
import commonsheet.sheet.Page;
import commonsheet.sheet.PageDrawing;
import commonsheet.sheet.PagePixels;
import commonsheet.sheet.PlacedPicture;
import commonsheet.sheet.Recogniser;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;

/** Finds the plots of a page, in its paths and in its pictures, each once. */
final class PagePlots {
  /** A picture smaller than this, in points, shows no chart. */
  private static final double LEAST_WIDTH = 90;

  private static final double LEAST_HEIGHT = 60;

  /** Captions and legends can stand this far around a picture, in points. */
  private static final double MARGIN = 24;

  /** A page of more pictures than this is one picture cut into pieces. */
  private static final int PIECES = 24;

  /** Fine enough for lines of half a point, in dots per inch. */
  private static final double RESOLUTION = 200;

  /** With fewer written words than this inside a plot's surroundings its numbers are not text. */
  private static final int FEW_WORDS = 6;

  private final Supplier<Recogniser> recogniser;

  PagePlots(Supplier<Recogniser> recogniser) {
    this.recogniser = recogniser;
  }

  /** The plots from the top down, those in paths before those in pictures. */
  List<Plot> of(OpenSheet open, Page page) throws SheetException {
    PageDrawing drawing = open.drawing(page.number());
    List<Plot> plots = new ArrayList<>(inPaths(open, page, drawing));
    for (PagePixels picture : pictures(open, page, drawing, plots)) {
      for (Plot plot : inPicture(picture, written(page))) {
        if (isNew(plot.frame(), plots)) {
          plots.add(plot);
        }
      }
    }
    return plots;
  }

  /**
   * The words to begin with. Where a page has written ones, what was recognised in its pictures is
   * left out: it is recognised again from the picture's own pixels, which are finer.
   */
  private static List<Word> written(Page page) {
    List<Word> written = page.words().stream().filter(word -> !word.recognised()).toList();
    return written.isEmpty() ? page.words() : written;
  }

  private List<Plot> inPaths(OpenSheet open, Page page, PageDrawing drawing) throws SheetException {
    List<Plot> plots = VectorPlots.find(drawing, written(page));
    boolean wordless = plots.stream().anyMatch(plot -> plot.words().size() < FEW_WORDS);
    if (!wordless) {
      return plots;
    }
    List<Word> words = withRecognised(open.pixels(page.number(), RESOLUTION), written(page));
    return VectorPlots.find(drawing, words);
  }

  private List<Plot> inPicture(PagePixels picture, List<Word> written) {
    List<Plot> plots = BitmapPlots.find(picture, written);
    boolean wordless =
        plots.stream().anyMatch(plot -> !new AxesReader(plot).read().faults().isEmpty());
    return wordless ? BitmapPlots.find(picture, withRecognised(picture, written)) : plots;
  }

  /** The written words and those only seen, each once. */
  private List<Word> withRecognised(PagePixels picture, List<Word> written) {
    List<Word> words = new ArrayList<>(written);
    for (Word word : recogniser.get().wordsOfDrawing(picture)) {
      Box box = word.box();
      boolean isWritten =
          written.stream().anyMatch(known -> known.box().contains(box.centreX(), box.centreY()));
      if (!isWritten) {
        words.add(word);
      }
    }
    return words;
  }

  /** The pictures that can show charts, larger ones first, without those plots in paths cover. */
  private static List<PagePixels> pictures(
      OpenSheet open, Page page, PageDrawing drawing, List<Plot> plots) throws SheetException {
    if (drawing.pictures().size() > PIECES) {
      return List.of(open.pixels(page.number(), RESOLUTION));
    }
    List<PlacedPicture> large = new ArrayList<>();
    for (PlacedPicture picture : drawing.pictures()) {
      Box box = picture.box();
      boolean fits = box.width() >= LEAST_WIDTH && box.height() >= LEAST_HEIGHT;
      if (fits && plots.stream().noneMatch(plot -> covered(box, plot.frame()) > 0.5)) {
        large.add(picture);
      }
    }
    large.sort(
        Comparator.comparingDouble(picture -> -picture.box().width() * picture.box().height()));
    List<PagePixels> pixels = new ArrayList<>();
    for (PlacedPicture picture : large) {
      pixels.add(open.pixels(page.number(), picture, MARGIN));
    }
    return pixels;
  }

  private static boolean isNew(Box frame, List<Plot> plots) {
    return plots.stream()
        .noneMatch(
            plot -> covered(frame, plot.frame()) > 0.5 || covered(plot.frame(), frame) > 0.5);
  }

  /** The share of a box that another covers. */
  private static double covered(Box box, Box by) {
    double width = Math.min(box.right(), by.right()) - Math.max(box.x(), by.x());
    double height = Math.min(box.bottom(), by.bottom()) - Math.max(box.y(), by.y());
    return Math.max(0, width) * Math.max(0, height) / Math.max(1e-6, box.width() * box.height());
  }
}
