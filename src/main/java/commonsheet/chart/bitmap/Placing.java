package commonsheet.chart.bitmap;

import commonsheet.sheet.Box;
import commonsheet.sheet.PagePixels;
import commonsheet.sheet.Point;
import commonsheet.sheet.Word;

/** Where pixels of a raster lie on the page, and the other way round. */
final class Placing {
  private final PagePixels picture;
  private final int step;

  Placing(PagePixels picture, Raster raster) {
    this.picture = picture;
    this.step = raster.step;
  }

  /** The place on the page of a place in the raster, whose pixels have their middles at wholes. */
  Point onPage(double x, double y) {
    return picture.onPage((x + 0.5) * step, (y + 0.5) * step);
  }

  /** Side of a pixel of the raster in points. */
  double pixel() {
    return picture.pixel() * step;
  }

  /** Where a word of the page lies in the raster. */
  Area area(Word word) {
    Box box = word.box();
    return new Area(column(box.x()), row(box.y()), column(box.right()), row(box.bottom()));
  }

  double column(double pageX) {
    double columns = picture.image().getWidth();
    return (pageX - picture.area().x()) * columns / picture.area().width() / step - 0.5;
  }

  double row(double pageY) {
    double rows = picture.image().getHeight();
    return (pageY - picture.area().y()) * rows / picture.area().height() / step - 0.5;
  }
}
