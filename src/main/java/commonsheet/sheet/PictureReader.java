package commonsheet.sheet;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * Reads what is drawn, not written. On a page without written words all words are recognised, and
 * where the page is a scan, it is put straight first and its rulings are found in the picture. On
 * other pages this is done for the pictures between the words, such as a table pasted as one.
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

  /** Share of its height and width that a recognised word has in common with the written one. */
  private static final double WRITTEN = 0.3;

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
    boolean scanned = page.rulings().isEmpty();
    Picture shown = picture(document, page, scanned);
    List<Word> words = shown.words(recogniser);
    int quarters = Uprightness.quarters(words);
    if (quarters != 0) {
      Picture turned = picture(document, page.turnedBy(quarters), scanned);
      return read(document, turned, turned.words(recogniser));
    }
    if (Uprightness.mayBeUpsideDown(words)) {
      Picture turned = picture(document, page.turnedBy(2), scanned);
      List<Word> others = turned.words(recogniser);
      if (Uprightness.sureCharacters(others) > Uprightness.sureCharacters(words)) {
        return read(document, turned, others);
      }
    }
    return words.isEmpty() ? page : read(document, shown, words);
  }

  private PageContent read(PDDocument document, Picture picture, List<Word> first)
      throws IOException {
    PageContent page = picture.page;
    BufferedImage finer = straightened(drawn(document, page, SECOND), picture.skew);
    List<Word> words = confirmed(first, pixels(page, finer));
    Rulings rulings =
        picture.scanned
            ? PictureRulings.of(picture.ink, page.width() / picture.image.getWidth())
            : page.rulings();
    return with(page, words, rulings);
  }

  /**
   * A page drawn for the first reading and put straight.
   *
   * @param scanned whether its rulings are part of the picture
   * @param skew by which it was turned, in degrees
   */
  private record Picture(
      PageContent page, boolean scanned, double skew, BufferedImage image, InkMask ink) {
    List<Word> words(Recogniser recogniser) {
      return recogniser.words(pixels(page, image));
    }
  }

  private static Picture picture(PDDocument document, PageContent page, boolean scanned)
      throws IOException {
    BufferedImage image = drawn(document, page, FIRST);
    InkMask ink = InkMask.of(image);
    double skew = scanned ? Skew.of(ink) : 0;
    if (skew == 0) {
      return new Picture(page, scanned, 0, image, ink);
    }
    BufferedImage straight = Skew.straightened(image, skew);
    return new Picture(page, scanned, skew, straight, InkMask.of(straight));
  }

  private static BufferedImage straightened(BufferedImage image, double skew) {
    return skew == 0 ? image : Skew.straightened(image, skew);
  }

  /**
   * A page that has words of its own, with those of its pictures.
   *
   * @throws IOException if it cannot be drawn
   * @throws RecogniserException if pictures cannot be read on this machine
   */
  PageContent readPictures(PDDocument document, PageContent page) throws IOException {
    BufferedImage coarse = drawn(document, page, FIRST);
    BufferedImage fine = drawn(document, page, SECOND);
    List<Word> written = new ArrayList<>(page.body());
    written.addAll(page.aside());
    List<Word> words = new ArrayList<>(written);
    List<Ruling> rulings = new ArrayList<>(page.rulings().all());
    for (Box region : page.pictures().boxes()) {
      PagePixels picture = part(page, coarse, region);
      confirmed(recogniser.words(picture), part(page, fine, region)).stream()
          .filter(word -> written.stream().noneMatch(other -> isSamePlace(word, other)))
          .forEach(words::add);
      boolean ruled = page.rulings().all().stream().anyMatch(r -> liesIn(r, region));
      if (!ruled) {
        rulings.addAll(rulings(picture));
      }
    }
    return with(page, words, Rulings.merged(rulings));
  }

  /**
   * A page with written words, those mended that have characters the file does not tell.
   *
   * @throws IOException if it cannot be drawn
   * @throws RecogniserException if pictures cannot be read on this machine
   */
  PageContent mend(PDDocument document, PageContent page) throws IOException {
    List<Word> suspects = SuspectWords.of(page.body());
    BufferedImage coarse = drawn(document, page, FIRST);
    if (coarse.getWidth() > coarse.getHeight() != page.width() > page.height()) {
      return page; // its words stand on their side and were put upright, the picture was not
    }
    List<TextPlace> places =
        suspects.stream().map(word -> new TextPlace(word.box(), word.turn())).toList();
    List<Word> first = recogniser.words(pixels(page, coarse), places);
    List<Word> second = recogniser.words(pixels(page, drawn(document, page, SECOND)), places);
    List<Word> body =
        ReadingSlips.mended(SuspectWords.mended(page.body(), suspects, first, second));
    return page.with(body, page.aside(), page.rulings(), page.curves());
  }

  private List<Word> confirmed(List<Word> first, PagePixels finer) {
    List<TextPlace> places = SecondReading.places(first);
    return new Confirmation(places.isEmpty() ? List.of() : recogniser.words(finer, places))
        .of(first);
  }

  private static PagePixels part(PageContent page, BufferedImage image, Box region) {
    double perPoint = image.getWidth() / page.width();
    Rectangle whole = new Rectangle(image.getWidth(), image.getHeight());
    Rectangle cut =
        new Rectangle(
                (int) Math.floor(region.x() * perPoint),
                (int) Math.floor(region.y() * perPoint),
                (int) Math.ceil(region.width() * perPoint),
                (int) Math.ceil(region.height() * perPoint))
            .intersection(whole);
    Box area =
        new Box(cut.x / perPoint, cut.y / perPoint, cut.width / perPoint, cut.height / perPoint);
    return new PagePixels(
        page.number(), area, image.getSubimage(cut.x, cut.y, cut.width, cut.height));
  }

  private static boolean isSamePlace(Word one, Word other) {
    return one.box().sharedHeight(other.box()) > WRITTEN
        && one.box().sharedWidth(other.box()) > WRITTEN;
  }

  private static boolean liesIn(Ruling ruling, Box region) {
    return region.contains(ruling.box().centreX(), ruling.box().centreY());
  }

  private static List<Ruling> rulings(PagePixels picture) {
    return PictureRulings.of(InkMask.of(picture.image()), picture.pixel()).all().stream()
        .map(ruling -> onPage(ruling, picture.area()))
        .toList();
  }

  private static Ruling onPage(Ruling ruling, Box area) {
    double across = ruling.level() ? area.y() : area.x();
    double along = ruling.level() ? area.x() : area.y();
    return ruling.moved(ruling.at() + across, ruling.from() + along, ruling.to() + along);
  }

  private static BufferedImage drawn(PDDocument document, PageContent page, double resolution)
      throws IOException {
    double scale =
        Math.min(
            resolution / POINTS_PER_INCH, Math.sqrt(MOST_PIXELS / (page.width() * page.height())));
    BufferedImage shown =
        new PDFRenderer(document).renderImage(page.number() - 1, (float) scale, ImageType.RGB);
    return OpenSheet.turned(shown, page.turned() / 90);
  }

  private static PagePixels pixels(PageContent page, BufferedImage image) {
    return new PagePixels(page.number(), new Box(0, 0, page.width(), page.height()), image);
  }

  private static PageContent with(PageContent page, List<Word> words, Rulings rulings) {
    List<Word> body = new ArrayList<>();
    List<Word> aside = new ArrayList<>();
    ReadingSlips.mended(words).forEach(word -> (word.turn() == 0 ? body : aside).add(word));
    List<Box> curves = page.curves().stream().filter(c -> !isLetter(c, words)).toList();
    return page.with(body, aside, rulings, curves);
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
