package commonsheet.sheet;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The pages of a file as pictures to look at: upright as {@link SheetReader} sees them, so that its
 * boxes lie over the words. The file is held open; one thread at a time may use it.
 */
public final class SheetPictures implements AutoCloseable {
  /** Pixels of a picture at most; an A4 page at 400 dots per inch has 15 million. */
  private static final double MOST_PIXELS = 16e6;

  private final SheetFile file;
  private final UprightPages pages;

  private SheetPictures(SheetFile file, SheetSettings settings, KeptWords kept) {
    this.file = file;
    this.pages =
        new UprightPages(file.document(), settings, page -> turned(kept, file.sha256(), page));
  }

  private static int turned(KeptWords kept, String sha256, int page) {
    PageContent known = kept == null ? null : kept.page(sha256, page);
    return known == null ? 0 : known.turned();
  }

  /**
   * Opens a file within the default limits.
   *
   * @param kept tells how pages that are pictures were turned when they were recognised; null for
   *     nothing, then they are shown as the file has them
   * @throws SheetException if it is no PDF, damaged, locked, without pages or beyond the limits
   */
  public static SheetPictures open(Path file, KeptWords kept) throws SheetException {
    SheetSettings settings = SheetSettings.defaults();
    return new SheetPictures(SheetFile.open(file, settings), settings, kept);
  }

  /** SHA-256 of the file, lower-case hexadecimal. */
  public String sha256() {
    return file.sha256();
  }

  /**
   * The sizes of all pages, in their order.
   *
   * @throws SheetException if a page cannot be read
   */
  public List<PageSize> sizes() throws SheetException {
    List<PageSize> sizes = new ArrayList<>();
    for (int page = 1; page <= file.document().getNumberOfPages(); page++) {
      Frame frame = frame(page);
      sizes.add(new PageSize(page, frame.width(), frame.height()));
    }
    return sizes;
  }

  /**
   * A page as PNG.
   *
   * @param page from 1
   * @param width in pixels; a picture that would be larger than some 16 million pixels comes out
   *     narrower
   * @throws SheetException if there is no such page or it cannot be drawn within the limits
   */
  public byte[] png(int page, int width) throws SheetException {
    Frame frame = frame(page);
    return png(page, new Box(0, 0, frame.width(), frame.height()), true, width);
  }

  /**
   * A part of a page as PNG, so that any part can be seen at any magnification.
   *
   * @param page from 1
   * @param part of the page as displayed, in points; what lies outside the page is cut off
   * @param width in pixels, with the same limit
   * @throws SheetException if there is no such page or part, or it cannot be drawn within the
   *     limits
   */
  public byte[] png(int page, Box part, int width) throws SheetException {
    Frame frame = frame(page);
    double left = Math.max(0, part.x());
    double top = Math.max(0, part.y());
    double right = Math.min(frame.width(), part.right());
    double bottom = Math.min(frame.height(), part.bottom());
    if (!(right - left > 0 && bottom - top > 0)) {
      throw new SheetException(
          SheetException.Kind.NO_PAGES,
          "That part lies outside page " + page + " of " + file.name() + "; choose one on it.");
    }
    return png(page, new Box(left, top, right - left, bottom - top), false, width);
  }

  private byte[] png(int page, Box part, boolean whole, int width) throws SheetException {
    double most = Math.sqrt(MOST_PIXELS / (part.width() * part.height()));
    double scale = Math.min(most, width / part.width());
    try {
      BufferedImage image = whole ? pages.drawn(page, scale) : pages.drawn(page, part, scale);
      return PngPicture.of(image);
    } catch (PageLimitException slow) {
      throw tooLarge(page, slow.getMessage());
    } catch (OutOfMemoryError large) {
      throw tooLarge(page, "does not fit into memory");
    } catch (StackOverflowError nested) {
      throw tooLarge(page, "is nested too deeply");
    } catch (IOException | RuntimeException damaged) {
      // The library meets damage in the content with all kinds of runtime exceptions.
      throw damaged(page, "drawn");
    }
  }

  private Frame frame(int page) throws SheetException {
    int count = file.document().getNumberOfPages();
    if (page < 1 || page > count) {
      throw new SheetException(
          SheetException.Kind.NO_PAGES,
          file.name() + " has no page " + page + "; choose one from 1 to " + count + ".");
    }
    try {
      return pages.frame(page);
    } catch (PageLimitException large) {
      throw tooLarge(page, large.getMessage());
    } catch (IOException | RuntimeException damaged) {
      throw damaged(page, "read");
    }
  }

  private SheetException tooLarge(int page, String why) {
    return new SheetException(
        SheetException.Kind.TOO_LARGE,
        "Page "
            + page
            + " of "
            + file.name()
            + " "
            + why
            + "; print it to a new PDF and use that.");
  }

  private SheetException damaged(int page, String what) {
    return new SheetException(
        SheetException.Kind.DAMAGED,
        "Page "
            + page
            + " of "
            + file.name()
            + " cannot be "
            + what
            + "; its content is damaged, so fetch the file again.");
  }

  @Override
  public void close() {
    file.close();
  }
}
