package commonsheet.workbench.place;

import commonsheet.sheet.Box;
import commonsheet.sheet.KeptWords;
import commonsheet.sheet.PageSize;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetPictures;
import commonsheet.workbench.folder.FileStamp;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The pages of sheets as pictures, and their sizes. What was shown lately is kept. */
public final class PagePictures implements AutoCloseable {
  /** Pictures of two or three long sheets, in bytes. */
  private static final long MOST_BYTES = 96L << 20;

  private static final long MOST_SHEETS = 64;

  /**
   * Widths are rounded up to a multiple of this many pixels, so that a window that is drawn wider
   * does not ask for a picture at each of its widths.
   */
  private static final int STEP = 160;

  /** Wider than any screen; finer parts are asked for by their box. */
  private static final int WIDEST = 4_800;

  private record Key(FileStamp sheet, int page, Box part, int width) {}

  private final OpenFiles<SheetPictures> open;
  private final RecentMap<Key, byte[]> pictures =
      new RecentMap<>(MOST_BYTES, picture -> picture.length);
  private final RecentMap<FileStamp, List<PageSize>> sizes =
      new RecentMap<>(MOST_SHEETS, each -> 1);

  /**
   * Pictures of any sheets.
   *
   * @param kept tells how pages that are pictures were turned when they were recognised; or null
   */
  PagePictures(KeptWords kept) {
    open = new OpenFiles<>(file -> SheetPictures.open(file, kept));
  }

  /** Draws everything anew, since a page turned out to be read in another direction. */
  void forget() {
    pictures.clear();
    sizes.clear();
  }

  /**
   * The sizes of the pages as displayed, in their order.
   *
   * @throws SheetException where the file cannot be read as a sheet
   */
  public List<PageSize> sizes(Path sheet) throws SheetException {
    FileStamp stamp = stamp(sheet);
    List<PageSize> known = sizes.get(stamp);
    if (known == null) {
      known = open.use(stamp, SheetPictures::sizes);
      sizes.put(stamp, known);
    }
    return known;
  }

  /**
   * A page, or a part of one, as PNG.
   *
   * @param page from 1
   * @param part in points of the page as displayed; null for all of it
   * @param width in pixels, at least 1; rounded up to a step
   * @throws SheetException where there is no such page or it cannot be drawn
   */
  public byte[] png(Path sheet, int page, Box part, int width) throws SheetException {
    int step = Math.min(WIDEST, (width + STEP - 1) / STEP * STEP);
    Key key = new Key(stamp(sheet), page, part, step);
    byte[] known = pictures.get(key);
    if (known == null) {
      known =
          open.use(
              key.sheet(),
              file -> {
                byte[] meanwhile = pictures.get(key);
                return meanwhile != null ? meanwhile : draw(file, key);
              });
      pictures.put(key, known);
    }
    return known;
  }

  private static byte[] draw(SheetPictures file, Key key) throws SheetException {
    return key.part() == null
        ? file.png(key.page(), key.width())
        : file.png(key.page(), key.part(), key.width());
  }

  static FileStamp stamp(Path sheet) throws SheetException {
    try {
      return FileStamp.of(sheet);
    } catch (IOException gone) {
      throw new SheetException(
          SheetException.Kind.NOT_FOUND, sheet + " is no longer there; load the page anew.");
    }
  }

  @Override
  public void close() {
    open.close();
  }
}
