package commonsheet.sheet.ocr;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds the lines of text in a picture. The network sees it tile by tile, so that its memory does
 * not grow with the picture; tiles share a margin, and each gives only what is within its own.
 */
final class Detector implements AutoCloseable {
  private static final String MODEL = "ch_PP-OCRv4_det_infer.onnx";

  /** Means and spreads the network was trained with. */
  private static final float[] MEAN = {0.485f, 0.456f, 0.406f};

  private static final float[] SPREAD = {0.229f, 0.224f, 0.225f};

  /** Sides of a picture for the network are multiples of this. */
  private static final int STEP = 32;

  /** Side of a tile without margins, and the margin on each side, in pixels. */
  private static final int TILE = 640;

  private static final int MARGIN = 48;

  private final Model model = Model.load(MODEL);

  /**
   * Boxes of the lines of text, in pixels of the picture.
   *
   * @param scale the picture is looked at with, as a factor
   */
  List<TurnedBox> regions(Pixels picture, double scale) {
    int width = Math.max(1, (int) Math.round(picture.width() * scale));
    int height = Math.max(1, (int) Math.round(picture.height() * scale));
    ProbabilityMap map = ProbabilityMap.empty(width, height);
    int columns = (width + TILE - 1) / TILE;
    int rows = (height + TILE - 1) / TILE;
    IntStream.range(0, columns * rows)
        .parallel()
        .forEach(i -> look(picture, scale, map, i % columns * TILE, i / columns * TILE));
    return TextRegions.of(map).stream().map(box -> box.scaled(1 / scale)).toList();
  }

  private void look(Pixels picture, double scale, ProbabilityMap map, int left, int top) {
    int right = Math.min(map.width(), left + TILE);
    int bottom = Math.min(map.height(), top + TILE);
    int x = Math.max(0, left - MARGIN);
    int y = Math.max(0, top - MARGIN);
    int width = stepped(Math.min(map.width(), right + MARGIN) - x);
    int height = stepped(Math.min(map.height(), bottom + MARGIN) - y);
    Pixels tile =
        picture.cut(TurnedBox.level(x, y, width, height).scaled(1 / scale), width, height);
    if (tile.isPlain()) {
      return;
    }
    Planes planes = new Planes(width, height, MEAN, SPREAD);
    planes.put(tile);
    float[] values = model.run(planes.buffer(), height, width).values();
    for (int row = top; row < bottom; row++) {
      System.arraycopy(
          values,
          (row - y) * width + left - x,
          map.values(),
          row * map.width() + left,
          right - left);
    }
  }

  private static int stepped(int length) {
    return (length + STEP - 1) / STEP * STEP;
  }

  @Override
  public void close() {
    model.close();
  }
}
