package commonsheet.sheet;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;

/**
 * Draws a chart of a sheet with what was read of it: the sheet's own figure in pale grey, curves
 * over it in thin lines of colour, the ticks by which the scales were read, and the names of the
 * curves beside it.
 */
public final class ChartPicture {
  /** Dots per inch: a line of half a point is more than a pixel wide. */
  private static final double RESOLUTION = 200;

  private static final double POINTS_PER_INCH = 72;
  private static final double SCALE = RESOLUTION / POINTS_PER_INCH;

  /** What is shown around the plot, in points: tick labels, titles, legends. */
  private static final double MARGIN = 45;

  /** Sizes in pixels. */
  private static final int LIST_WIDTH = 560;

  /** Between the figure and the list. */
  private static final int GAP = 16;

  private static final int TEXT_SIZE = 19;
  private static final int LINE_HEIGHT = 27;
  private static final int INDENT = 48;
  private static final float LINE_WIDTH = 1.6f;
  private static final int TICK = 9;
  private static final float[] BROKEN = {9, 6};

  /** How much of the figure's darkness is left, so that colours stand out on it. */
  private static final double PALENESS = 0.55;

  private static final int WHITE = 255;

  /** Colours of M. Okabe and K. Ito, "Color Universal Design", 2002 (from memory), and others. */
  private static final int[] COLOURS = {
    0xD55E00, 0x0072B2, 0x009E73, 0xCC3399, 0x7A4FBF, 0xB08000, 0xE0002A, 0x0090C8, 0x4C7A00,
    0x805030
  };

  private static final Color TICKS = new Color(0xE0007A);

  private final Box shown;
  private final double scaleX;
  private final double scaleY;
  private final BufferedImage picture;
  private final Graphics2D graphics;

  private ChartPicture(Box shown, BufferedImage figure, int curves) {
    this.shown = shown;
    this.scaleX = figure.getWidth() / shown.width();
    this.scaleY = figure.getHeight() / shown.height();
    int height = Math.max(figure.getHeight(), (curves + 3) * LINE_HEIGHT);
    this.picture =
        new BufferedImage(figure.getWidth() + LIST_WIDTH, height, BufferedImage.TYPE_INT_RGB);
    this.graphics = picture.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, picture.getWidth(), height);
    graphics.drawImage(figure, 0, 0, null);
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, TEXT_SIZE));
  }

  /**
   * Draws one chart as PNG.
   *
   * @param page from 1
   * @param plot the plot area on the page
   * @param ticks places of the marks by which the scales were read
   * @param title written above the list of curves
   * @return the bytes of the picture
   * @throws SheetException if the page cannot be drawn
   */
  public static byte[] draw(
      OpenSheet sheet, int page, Box plot, List<Point> ticks, List<CurveMark> curves, String title)
      throws SheetException {
    int columns = (int) Math.ceil(plot.width() * SCALE);
    int rows = (int) Math.ceil(plot.height() * SCALE);
    PagePixels pixels = sheet.pixels(page, new PlacedPicture(plot, columns, rows, 0), MARGIN);
    BufferedImage figure = pale(pixels.image());
    ChartPicture drawing = new ChartPicture(pixels.area(), figure, curves.size());
    drawing.ticks(ticks);
    for (int i = 0; i < curves.size(); i++) {
      drawing.curve(curves.get(i), i, curves.size());
    }
    drawing.list(title, curves, figure.getWidth() + GAP);
    return drawing.png();
  }

  private static BufferedImage pale(BufferedImage figure) {
    BufferedImage pale =
        new BufferedImage(figure.getWidth(), figure.getHeight(), BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < figure.getHeight(); y++) {
      for (int x = 0; x < figure.getWidth(); x++) {
        int grey = (int) Math.round(WHITE - PALENESS * (WHITE - lightness(figure.getRGB(x, y))));
        pale.setRGB(x, y, grey << 16 | grey << 8 | grey);
      }
    }
    return pale;
  }

  /** From 0 for black to 255 for white. */
  private static double lightness(int rgb) {
    return 0.3 * (rgb >> 16 & 0xFF) + 0.59 * (rgb >> 8 & 0xFF) + 0.11 * (rgb & 0xFF);
  }

  private void ticks(List<Point> ticks) {
    graphics.setColor(TICKS);
    graphics.setStroke(new BasicStroke(LINE_WIDTH));
    for (Point tick : ticks) {
      int x = (int) Math.round(x(tick));
      int y = (int) Math.round(y(tick));
      graphics.drawLine(x - TICK, y, x + TICK, y);
      graphics.drawLine(x, y - TICK, x, y + TICK);
    }
  }

  private void curve(CurveMark curve, int index, int all) {
    if (curve.points().isEmpty()) {
      return;
    }
    graphics.setColor(colour(index));
    graphics.setStroke(stroke(curve));
    Path2D line = new Path2D.Double();
    line.moveTo(x(curve.points().get(0)), y(curve.points().get(0)));
    curve.points().forEach(point -> line.lineTo(x(point), y(point)));
    graphics.draw(line);
    tag(curve, (index + 1.0) / (all + 1));
  }

  /** The short name on a white ground, further along for each curve so that names stand apart. */
  private void tag(CurveMark curve, double share) {
    Point at = along(curve.points(), share);
    FontMetrics metrics = graphics.getFontMetrics();
    String text = (curve.unsure() ? "?" : "") + curve.id();
    Rectangle2D bounds = metrics.getStringBounds(text, graphics);
    double left = x(at) - bounds.getWidth() / 2;
    double base = y(at) - LINE_HEIGHT / 2.0;
    Color colour = graphics.getColor();
    graphics.setColor(Color.WHITE);
    graphics.fill(
        new Rectangle2D.Double(
            left - 1, base + bounds.getY() + 3, bounds.getWidth() + 2, bounds.getHeight() - 4));
    graphics.setColor(colour);
    graphics.drawString(text, (float) left, (float) base);
  }

  private static Point along(List<Point> points, double share) {
    double length = 0;
    for (int i = 1; i < points.size(); i++) {
      length += points.get(i).distance(points.get(i - 1));
    }
    double left = share * length;
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      Point to = points.get(i);
      double piece = to.distance(from);
      if (piece >= left && piece > 0) {
        double part = left / piece;
        return new Point(
            from.x() + part * (to.x() - from.x()), from.y() + part * (to.y() - from.y()));
      }
      left -= piece;
    }
    return points.get(points.size() - 1);
  }

  private void list(String title, List<CurveMark> curves, int left) {
    graphics.setColor(Color.BLACK);
    graphics.drawString(title, left, LINE_HEIGHT);
    for (int i = 0; i < curves.size(); i++) {
      CurveMark curve = curves.get(i);
      int base = (i + 2) * LINE_HEIGHT;
      graphics.setColor(colour(i));
      graphics.setStroke(stroke(curve));
      if (!curve.points().isEmpty()) {
        graphics.drawLine(left, base - 7, left + INDENT - 8, base - 7);
      }
      String sure = (curve.unsure() ? "? " : "") + curve.id() + "  ";
      graphics.drawString(sure + curve.name(), left + INDENT, base);
    }
  }

  private static BasicStroke stroke(CurveMark curve) {
    return curve.unsure()
        ? new BasicStroke(LINE_WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, BROKEN, 0)
        : new BasicStroke(LINE_WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
  }

  private static Color colour(int index) {
    return new Color(COLOURS[index % COLOURS.length]);
  }

  private double x(Point point) {
    return (point.x() - shown.x()) * scaleX;
  }

  private double y(Point point) {
    return (point.y() - shown.y()) * scaleY;
  }

  private byte[] png() {
    graphics.dispose();
    try {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      ImageIO.write(picture, "png", bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new IllegalStateException("a picture in memory is always written", e);
    }
  }
}
