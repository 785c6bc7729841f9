package commonsheet.sheet;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * Reads a page on which nothing is written but something is drawn: its words are recognised, and
 * where the page is a scan, it is put straight first and its rulings are found in the picture.
 */
final class PictureReader {
  /**
   * Resolutions of the two readings, in dots per inch. Scans have 150 to 300; what both readings
   * have is not due to how the pixels happened to fall.
   */
  private static final double FIRST = 200;

  private static final double SECOND = 260;

  private static final double POINTS_PER_INCH = 72;

  /** Pixels a page is drawn with at most; an A4 page takes 6.6 million for the second reading. */
  private static final double MOST_PIXELS = 16e6;

  /** Points around a recognised word within which an outline is one of its letters. */
  private static final double AROUND = 1.5;

  private final Recogniser recogniser;

  PictureReader(Recogniser recogniser) {
    this.recogniser = recogniser;
  }

  /**
   * The page with its words.
   *
   * @throws IOException if it cannot be drawn
   * @throws RecogniserException if pictures cannot be read on this machine
   */
  PageContent read(PDDocument document, PageContent page) throws IOException {
    BufferedImage image = drawn(document, page, FIRST);
    InkMask ink = InkMask.of(image);
    boolean scanned = page.rulings().isEmpty();
    double skew = scanned ? Skew.of(ink) : 0;
    if (skew != 0) {
      image = Skew.straightened(image, skew);
      ink = InkMask.of(image);
    }
    List<Word> first = recogniser.words(pixels(page, image));
    if (first.isEmpty()) {
      return page;
    }
    BufferedImage finer = drawn(document, page, SECOND);
    if (skew != 0) {
      finer = Skew.straightened(finer, skew);
    }
    List<Word> words = new Confirmation(recogniser.words(pixels(page, finer))).of(first);
    Rulings rulings =
        scanned ? PictureRulings.of(ink, page.width() / image.getWidth()) : page.rulings();
    return with(page, words, rulings);
  }

  private static BufferedImage drawn(PDDocument document, PageContent page, double resolution)
      throws IOException {
    double scale =
        Math.min(
            resolution / POINTS_PER_INCH, Math.sqrt(MOST_PIXELS / (page.width() * page.height())));
    return new PDFRenderer(document).renderImage(page.number() - 1, (float) scale, ImageType.RGB);
  }

  private static PagePixels pixels(PageContent page, BufferedImage image) {
    return new PagePixels(page.number(), new Box(0, 0, page.width(), page.height()), image);
  }

  private static PageContent with(PageContent page, List<Word> words, Rulings rulings) {
    List<Word> body = new ArrayList<>();
    List<Word> aside = new ArrayList<>();
    words.forEach(word -> (word.turn() == 0 ? body : aside).add(ReadingSlips.mended(word)));
    List<Box> curves = page.curves().stream().filter(c -> !isLetter(c, words)).toList();
    return new PageContent(
        page.number(),
        page.width(),
        page.height(),
        body,
        aside,
        rulings,
        curves,
        page.pictures(),
        page.figures());
  }

  private static boolean isLetter(Box curve, List<Word> words) {
    return words.stream()
        .map(Word::box)
        .anyMatch(
            box ->
                curve.x() >= box.x() - AROUND
                    && curve.right() <= box.right() + AROUND
                    && curve.y() >= box.y() - AROUND
                    && curve.bottom() <= box.bottom() + AROUND);
  }
}
