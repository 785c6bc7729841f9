package commonsheet.chart.bitmap;

import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.PagePixels;
import java.util.ArrayList;
import java.util.List;

/** The lines in a plot whose place is known, whether they can be curves or not. */
public final class BitmapLines {
  /** Pixels in a row that are no line. */
  private static final int SPECK = 8;

  private BitmapLines() {}

  /**
   * Every line of a plot.
   *
   * @param picture a page or a part of one
   * @param frame the plot area, in points from the top left of the page
   */
  public static List<Trace> in(PagePixels picture, Box frame) {
    Raster raster = Raster.of(picture.image());
    Placing placing = new Placing(picture, raster);
    Area rough =
        new Area(
            Math.max(0, placing.column(frame.x())),
            Math.max(0, placing.row(frame.y())),
            Math.min(raster.width - 1.0, placing.column(frame.right())),
            Math.min(raster.height - 1.0, placing.row(frame.bottom())));
    if (rough.width() < SPECK || rough.height() < SPECK) {
      return List.of();
    }
    View view = View.of(raster);
    Lattice lattice = Lattice.of(view, view.transposed(), rough);
    Field field = new Field(raster, lattice.area());
    List<Trace> lines = new ArrayList<>();
    for (Curves.Candidate line :
        PlotDraft.trace(field, lattice, List.of(), List.of()).candidates()) {
      if (line.strand().length() >= SPECK) {
        lines.add(PlotDraft.trace(line, field, placing, List.of()));
      }
    }
    return lines;
  }
}
