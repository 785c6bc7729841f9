package commonsheet.sheet.ocr;

import commonsheet.sheet.Box;
import commonsheet.sheet.PagePixels;
import commonsheet.sheet.Recogniser;
import commonsheet.sheet.TextPlace;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;

/**
 * Reads the words of pictures with the PP-OCR v4 networks for Chinese and English, in this process.
 * They are loaded at the first picture and stay until {@link #close}; one object serves any number
 * of threads. Boxes of words reach from the first to the last column of their ink, and from the top
 * to the bottom of the ink of their line.
 */
public final class PictureWords implements Recogniser, AutoCloseable {
  /**
   * Resolution at which lines are looked for, in dots per inch: print of 5 points is 12 pixels high
   * then, which the network still finds. What the lines say is read at the picture's own.
   */
  private static final double LOOKED_AT = 180;

  /** The same for drawings, whose print is smaller, and pixels they are looked at with at most. */
  private static final double DRAWING_LOOKED_AT = 260;

  private static final double MOST_DRAWING_PIXELS = 4e6;

  private static final double POINTS_PER_INCH = 72;

  /** Pixels a picture is looked at with at most; an A4 page has 3.1 million. */
  private static final double MOST_PIXELS = 12e6;

  /** Share of a box's sides within another from which it is a piece of it. */
  private static final double MOST = 0.6;

  /** Room around the ink of a place that is read for itself, in its height. */
  private static final double ROOM = 0.25;

  /** Mean confidence below which a reading is no text. */
  private static final double NO_TEXT = 0.5;

  private final int threads;
  private Detector detector;
  private LineReader reader;
  private ForkJoinPool pool;

  /** Reads on all processors. */
  public PictureWords() {
    this(Runtime.getRuntime().availableProcessors());
  }

  /**
   * Reads on a number of threads.
   *
   * @param threads at least 1
   */
  public PictureWords(int threads) {
    if (threads < 1) {
      throw new IllegalArgumentException("reading pictures needs at least one thread");
    }
    this.threads = threads;
  }

  @Override
  public List<Word> words(PagePixels picture) {
    return words(picture, false);
  }

  @Override
  public List<Word> wordsOfDrawing(PagePixels picture) {
    return words(picture, true);
  }

  private List<Word> words(PagePixels picture, boolean drawing) {
    Pixels pixels = Pixels.of(picture.image());
    if (pixels.isPlain()) {
      return List.of();
    }
    // Parallel streams run on the pool their task was given to.
    return started()
        .submit(
            () ->
                words(
                    Reading.of(pixels, lines(picture, pixels, drawing), reader),
                    drawing,
                    picture,
                    pixels))
        .join();
  }

  @Override
  public List<Word> words(PagePixels picture, List<TextPlace> places) {
    Pixels pixels = Pixels.of(picture.image());
    List<Reading.Way> ways =
        places.stream()
            .map(place -> new Reading.Way(strip(place, picture, pixels), place.turn()))
            .toList();
    return started()
        .submit(() -> words(Reading.along(pixels, ways, reader), false, picture, pixels))
        .join();
  }

  /** The strip around a place, with the room about its ink that the network is used to. */
  private static TurnedBox strip(TextPlace place, PagePixels picture, Pixels pixels) {
    double pixel = picture.area().width() / pixels.width();
    Box ink = place.ink();
    TurnedBox box =
        TurnedBox.level(
                ink.x() - picture.area().x(),
                ink.y() - picture.area().y(),
                ink.width(),
                ink.height())
            .scaled(1 / pixel)
            .read(place.turn());
    TurnedBox roomy = box.grown(ROOM * box.height());
    return place.turn() == 0 ? InkFit.fitted(pixels, roomy) : roomy;
  }

  /** The boxes of the lines of text of a picture, in its pixels. */
  private List<TurnedBox> lines(PagePixels picture, Pixels pixels, boolean drawing) {
    double pixel = picture.area().width() / pixels.width();
    double area = (double) pixels.width() * pixels.height();
    double scale = Math.min(LOOKED_AT * pixel / POINTS_PER_INCH, Math.sqrt(MOST_PIXELS / area));
    if (drawing) {
      double finer = DRAWING_LOOKED_AT * pixel / POINTS_PER_INCH;
      scale = Math.max(scale, Math.min(finer, Math.sqrt(MOST_DRAWING_PIXELS / area)));
    }
    List<TurnedBox> found =
        detector.regions(pixels, scale).stream().map(box -> InkFit.fitted(pixels, box)).toList();
    List<TurnedBox> fitted = drawing ? DrawingLines.completed(pixels, found) : found;
    return fitted.stream().filter(box -> !isPartOfAnother(box, fitted)).toList();
  }

  private static List<Word> words(
      List<Reading> readings, boolean drawing, PagePixels picture, Pixels pixels) {
    List<Word> words = new ArrayList<>();
    for (Reading reading : readings) {
      if (reading.line().confidence() >= NO_TEXT) {
        words.addAll(words(reading, drawing, picture, pixels));
      }
    }
    return words;
  }

  /** Whether a box lies mostly in a larger one, whose line it would repeat a piece of. */
  private static boolean isPartOfAnother(TurnedBox box, List<TurnedBox> all) {
    Box own = box.around();
    return all.stream()
        .filter(other -> other.area() > box.area())
        .map(TurnedBox::around)
        .anyMatch(
            other ->
                other.contains(own.centreX(), own.centreY())
                    && own.sharedWidth(other) > MOST
                    && own.sharedHeight(other) > MOST);
  }

  private static List<Word> words(
      Reading reading, boolean drawing, PagePixels picture, Pixels pixels) {
    int turn = drawing ? reading.angle() : reading.turn();
    TurnedBox box = reading.box();
    StripInk ink = StripInk.of(reading.strip());
    double pixel = picture.area().width() / pixels.width();
    double along = box.length() / reading.strip().width();
    double down = box.height() / reading.strip().height();
    double size = TypeSize.of(reading.line().text(), (ink.bottom() - ink.top()) * down) * pixel;
    List<Word> words = new ArrayList<>();
    for (WordSplitter.Part part :
        WordSplitter.split(reading.line(), ink, reading.strip().width())) {
      Box place =
          box.part(part.from() * along, part.to() * along, ink.top() * down, ink.bottom() * down);
      Box onPage =
          new Box(
              picture.area().x() + place.x() * pixel,
              picture.area().y() + place.y() * pixel,
              place.width() * pixel,
              place.height() * pixel);
      words.add(new Word(part.text(), onPage, size, false, turn, 0, true, part.confidence()));
    }
    return words;
  }

  private synchronized ForkJoinPool started() {
    if (pool == null) {
      detector = new Detector();
      reader = new LineReader();
      pool = new ForkJoinPool(threads);
    }
    return pool;
  }

  @Override
  public synchronized void close() {
    if (pool != null) {
      pool.shutdownNow();
      detector.close();
      reader.close();
      pool = null;
    }
  }
}
