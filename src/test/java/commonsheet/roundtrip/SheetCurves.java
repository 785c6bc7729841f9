package commonsheet.roundtrip;

import commonsheet.chart.ChartReader;
import commonsheet.chart.bitmap.BitmapPlots;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.vector.VectorPlots;
import commonsheet.record.Curve;
import commonsheet.sheet.OpenSheet;
import commonsheet.sheet.Page;
import commonsheet.sheet.PageDrawing;
import commonsheet.sheet.PagePixels;
import commonsheet.sheet.PlacedPicture;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetReader;
import commonsheet.sheet.Word;
import commonsheet.sheet.ocr.PictureWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** All curves of a sheet, from its drawings and its pictures. */
final class SheetCurves implements AutoCloseable {
  private final PictureWords recogniser = new PictureWords();

  List<Curve> read(Path file) throws SheetException {
    List<Curve> curves = new ArrayList<>();
    List<Page> pages = SheetReader.read(file).pages();
    try (OpenSheet sheet = OpenSheet.open(file)) {
      for (Page page : pages) {
        PageDrawing drawing = sheet.drawing(page.number());
        List<Plot> plots = new ArrayList<>(VectorPlots.find(drawing, page.words()));
        for (PlacedPicture picture : drawing.pictures()) {
          PagePixels pixels = sheet.pixels(page.number(), picture, 0);
          List<Word> words = new ArrayList<>(page.words());
          words.addAll(recogniser.words(pixels));
          plots.addAll(BitmapPlots.find(pixels, words));
        }
        new ChartReader().read(plots).forEach(chart -> curves.addAll(chart.curves()));
      }
    }
    return curves;
  }

  @Override
  public void close() {
    recogniser.close();
  }
}
