package commonsheet.workbench.place;

import commonsheet.quantity.NumberStyle;
import commonsheet.sheet.KeptWords;
import commonsheet.sheet.Page;
import commonsheet.sheet.PageKind;
import commonsheet.sheet.Recogniser;
import commonsheet.sheet.RecogniserException;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetWords;
import commonsheet.sheet.Word;
import commonsheet.workbench.folder.FileStamp;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The words of sheets, page by page. Pages that are pictures are recognised when somebody asks for
 * their words, which takes some seconds once.
 */
public final class PageWords implements AutoCloseable {
  /** Some ten long sheets; a page of words takes some 50 kB. */
  private static final long MOST_PAGES = 600;

  private record Key(FileStamp sheet, int page, boolean recognised) {}

  private final Recogniser recogniser;
  private final Runnable turned;
  private final OpenFiles<SheetWords> open;
  private final RecentMap<Key, Page> pages = new RecentMap<>(MOST_PAGES, page -> 1);

  /**
   * Words by a recogniser for those that are drawn.
   *
   * @param kept where these are kept from one start to the next; null for nowhere
   * @param turned what to do when a page turns out to be read in another direction than it has
   */
  PageWords(Recogniser recogniser, KeptWords kept, Runnable turned) {
    this.recogniser = recogniser;
    this.turned = turned;
    this.open = new OpenFiles<>(file -> SheetWords.open(file, kept));
  }

  /**
   * The words of a page in reading order, those of its pictures among them.
   *
   * @param page from 1
   * @throws SheetException where there is no such page or it cannot be read
   */
  public List<Word> of(Path sheet, int page) throws SheetException {
    FileStamp stamp = PagePictures.stamp(sheet);
    Page written = page(stamp, page, false);
    return isDrawn(written) ? page(stamp, page, true).words() : written.words();
  }

  /**
   * All pages with the words that are known at once: the written ones, and those of pictures that
   * somebody asked for before.
   *
   * @throws SheetException where the sheet cannot be read
   */
  public List<Page> known(Path sheet) throws SheetException {
    FileStamp stamp = PagePictures.stamp(sheet);
    int count = open.use(stamp, SheetWords::pages);
    List<Page> all = new ArrayList<>();
    for (int number = 1; number <= count; number++) {
      Page recognised = recognised(stamp, number);
      all.add(recognised != null ? recognised : page(stamp, number, false));
    }
    return all;
  }

  /**
   * The pages with pictures whose words nobody asked for yet.
   *
   * @throws SheetException where the sheet cannot be read
   */
  public List<Integer> unread(Path sheet) throws SheetException {
    FileStamp stamp = PagePictures.stamp(sheet);
    return known(sheet).stream()
        .filter(page -> pages.get(new Key(stamp, page.number(), true)) == null)
        .filter(PageWords::isDrawn)
        .map(Page::number)
        .toList();
  }

  /**
   * Which mark the sheet puts before its decimals.
   *
   * @throws SheetException where the sheet cannot be read
   */
  NumberStyle style(Path sheet) throws SheetException {
    StringBuilder text = new StringBuilder();
    for (Page page : known(sheet)) {
      page.words().forEach(word -> text.append(word.text()).append(' '));
    }
    return NumberStyle.of(text.toString());
  }

  /** Whether words of the page may be drawn that are not written. */
  static boolean isDrawn(Page page) {
    return page.kind() == PageKind.PICTURE || page.kind() == PageKind.PARTLY_PICTURE;
  }

  /**
   * A page that is known with the words of its pictures, from before or an earlier start; or null.
   */
  private Page recognised(FileStamp stamp, int number) throws SheetException {
    Key key = new Key(stamp, number, true);
    Page known = pages.get(key);
    if (known == null && isDrawn(page(stamp, number, false))) {
      known = open.use(stamp, file -> file.keptPage(number));
      if (known != null) {
        pages.put(key, known);
      }
    }
    return known;
  }

  private Page page(FileStamp stamp, int number, boolean recognised) throws SheetException {
    Key key = new Key(stamp, number, recognised);
    Page known = pages.get(key);
    if (known == null) {
      known =
          open.use(
              stamp,
              file -> {
                Page meanwhile = pages.get(key);
                return meanwhile != null ? meanwhile : read(file, number, recognised);
              });
      pages.put(key, known);
    }
    return known;
  }

  private Page read(SheetWords file, int number, boolean recognised) throws SheetException {
    if (!recognised) {
      return file.page(number);
    }
    try {
      Page page = file.page(number, recogniser);
      if (page.turned() != 0) {
        turned.run();
      }
      return page;
    } catch (RecogniserException unable) {
      // Where pictures cannot be read on this machine, the written words are all there is.
      return file.page(number);
    }
  }

  @Override
  public void close() {
    open.close();
  }
}
