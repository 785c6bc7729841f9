package commonsheet.sheet.ocr;

/** Reads strips of text, each one line high. */
final class LineReader implements AutoCloseable {
  private static final String MODEL = "ch_PP-OCRv4_rec_infer.onnx";

  /** Height of a strip in pixels, as the network was trained with. */
  private static final int HEIGHT = 48;

  /** Widest strip, for a line of some 250 characters; wider ones are pressed together. */
  private static final int WIDEST = 4096;

  /** Narrowest picture for the network, and the step its widths go by. */
  private static final int NARROWEST = 64;

  private static final int STEP = 8;

  private static final float[] MIDDLE = {0.5f, 0.5f, 0.5f};

  private final Model model = Model.load(MODEL);
  private final CtcDecoder decoder = new CtcDecoder(Alphabet.load());

  /** Cuts a strip of the right height out of a picture, without drawn lines. */
  static Pixels strip(Pixels picture, TurnedBox box) {
    double width = HEIGHT * box.length() / box.height();
    return DrawnLines.without(
        picture.cut(box, (int) Math.max(1, Math.min(WIDEST, Math.round(width))), HEIGHT));
  }

  /** What a strip says. */
  ReadLine read(Pixels strip) {
    int width = (Math.max(NARROWEST, strip.width()) + STEP - 1) / STEP * STEP;
    Planes planes = new Planes(width, HEIGHT, MIDDLE, MIDDLE);
    planes.put(strip);
    Model.Output output = model.run(planes.buffer(), HEIGHT, width);
    int steps = (int) output.shape()[1];
    int classes = (int) output.shape()[2];
    return decoder.decode(output.values(), steps, classes, (double) width / steps);
  }

  @Override
  public void close() {
    model.close();
  }
}
