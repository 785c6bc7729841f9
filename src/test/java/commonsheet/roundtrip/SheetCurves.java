package commonsheet.roundtrip;

import commonsheet.chart.ChartReader;
import commonsheet.chart.SheetCharts;
import commonsheet.record.Curve;
import commonsheet.sheet.OpenSheet;
import commonsheet.sheet.Recogniser;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetReader;
import commonsheet.sheet.ocr.PictureWords;
import java.nio.file.Path;
import java.util.List;

/** All curves of a sheet, by the public way to its charts. */
final class SheetCurves implements AutoCloseable {
  private final SheetCharts charts = new SheetCharts(new ChartReader(), this::recogniser);
  private PictureWords words;

  List<Curve> read(Path file) throws SheetException {
    try (OpenSheet sheet = OpenSheet.open(file)) {
      return charts.charts(sheet, SheetReader.read(file)).stream()
          .flatMap(chart -> chart.curves().stream())
          .toList();
    }
  }

  private Recogniser recogniser() {
    if (words == null) {
      words = new PictureWords();
    }
    return words;
  }

  @Override
  public void close() {
    if (words != null) {
      words.close();
    }
  }
}
