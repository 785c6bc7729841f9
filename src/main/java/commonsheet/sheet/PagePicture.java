package commonsheet.sheet;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Draws a page with marks on it, so that one can see what was read where. */
public final class PagePicture {
  /** Pixels per point: 144 dots per inch, enough to read 6-point print on a screen. */
  private static final float SCALE = 2;

  /** Size of the labels in points. */
  private static final float LABEL_SIZE = 5.5f;

  private static final int FILL_OPACITY = 28;

  private PagePicture() {}

  /**
   * Writes the picture of a page with its marks as PNG, upright as {@link SheetReader} sees the
   * page.
   *
   * @param pageNumber from 1
   * @param turned degrees clockwise the page was turned by to be read, as {@link Page#turned} tells
   * @throws SheetException if the file cannot be read as a sheet or has no such page
   * @throws IOException if the picture cannot be written
   */
  public static void draw(Path pdf, int pageNumber, int turned, List<Mark> marks, Path png)
      throws SheetException, IOException {
    SheetSettings settings = SheetSettings.defaults();
    try (SheetFile file = SheetFile.open(pdf, settings)) {
      PDDocument document = file.document();
      if (pageNumber < 1 || pageNumber > document.getNumberOfPages()) {
        throw new SheetException(
            SheetException.Kind.NO_PAGES,
            file.name()
                + " has no page "
                + pageNumber
                + "; choose one from 1 to "
                + document.getNumberOfPages()
                + ".");
      }
      BufferedImage image =
          OpenSheet.turned(upright(document, pageNumber - 1, settings), turned / 90);
      draw(image, marks);
      if (!ImageIO.write(image, "png", png.toFile())) {
        throw new IOException("This Java cannot write PNG pictures.");
      }
    }
  }

  private static BufferedImage upright(PDDocument document, int index, SheetSettings settings)
      throws IOException {
    BufferedImage shown = new PDFRenderer(document).renderImage(index, SCALE, ImageType.RGB);
    PDPage page = document.getPage(index);
    Ink ink = PageScanner.scan(page, document.getDocumentCatalog().getOCProperties(), settings);
    int quarters = WordBuilder.sideways(ink.glyphs(), Frame.of(page)) / 90;
    return OpenSheet.turned(shown, quarters);
  }

  private static void draw(BufferedImage image, List<Mark> marks) {
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.scale(SCALE, SCALE);
    graphics.setStroke(new BasicStroke(0.6f));
    graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont(LABEL_SIZE));
    for (Mark mark : marks) {
      Box box = mark.box();
      Color color = new Color(mark.tone().rgb());
      Rectangle2D frame = new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
      graphics.setColor(new Color(color.getRed(), color.getGreen(), color.getBlue(), FILL_OPACITY));
      graphics.fill(frame);
      graphics.setColor(color);
      graphics.draw(frame);
      label(graphics, mark.label(), box);
    }
    graphics.dispose();
  }

  private static void label(Graphics2D graphics, String label, Box box) {
    if (label.isEmpty()) {
      return;
    }
    FontMetrics metrics = graphics.getFontMetrics();
    Rectangle2D bounds = metrics.getStringBounds(label, graphics);
    double top = Math.max(0, box.y() - bounds.getHeight());
    Color color = graphics.getColor();
    graphics.setColor(Color.WHITE);
    graphics.fill(new Rectangle2D.Double(box.x(), top, bounds.getWidth(), bounds.getHeight()));
    graphics.setColor(color);
    graphics.drawString(label, (float) box.x(), (float) (top - bounds.getY()));
  }
}
