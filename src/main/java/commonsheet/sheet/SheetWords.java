package commonsheet.sheet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The words of a file, page by page, for those who look at single pages. The file is held open; one
 * thread at a time may use it.
 */
public final class SheetWords implements AutoCloseable {
  private final SheetFile file;
  private final SheetSettings settings;
  private final KeptWords kept;

  private SheetWords(SheetFile file, SheetSettings settings, KeptWords kept) {
    this.file = file;
    this.settings = settings;
    this.kept = kept;
  }

  /**
   * Opens a file within the default limits.
   *
   * @param kept where words of pictures are kept from one reading to the next; null for nowhere
   * @throws SheetException if it is no PDF, damaged, locked, without pages or beyond the limits
   */
  public static SheetWords open(Path file, KeptWords kept) throws SheetException {
    SheetSettings settings = SheetSettings.defaults();
    return new SheetWords(SheetFile.open(file, settings), settings, kept);
  }

  /** How many pages the file has. */
  public int pages() {
    return file.document().getNumberOfPages();
  }

  /**
   * The words that are written on a page, in reading order, where they stand on the page as
   * displayed; and what the page offers besides.
   *
   * @param number from 1
   * @throws SheetException if there is no such page or it cannot be read within the limits
   */
  public Page page(int number) throws SheetException {
    return built(content(number));
  }

  /**
   * Likewise with the words of its pictures, if they are kept from an earlier reading.
   *
   * @return null where they are not
   */
  public Page keptPage(int number) {
    PageContent known = kept == null ? null : kept.page(file.sha256(), number);
    return known == null ? null : built(known);
  }

  /**
   * Likewise with the words of its pictures. Takes some seconds where it has any.
   *
   * @throws SheetException if there is no such page or it cannot be read within the limits
   * @throws RecogniserException if pictures cannot be read on this machine
   */
  public Page page(int number, Recogniser recogniser) throws SheetException {
    Page known = keptPage(number);
    if (known != null) {
      return known;
    }
    PageContent content = content(number);
    PictureReader pictures = new PictureReader(recogniser);
    PDDocument document = file.document();
    try {
      PageContent whole =
          switch (content.kind()) {
            case PICTURE -> pictures.read(document, content);
            case PARTLY_PICTURE -> pictures.readPictures(document, content);
            default -> content;
          };
      if (kept != null && whole != content) {
        kept.keep(file.sha256(), whole);
      }
      return built(whole);
    } catch (IOException undrawn) {
      return built(content);
    }
  }

  private Page built(PageContent content) {
    return SheetBuilder.build(file.name(), file.sha256(), file.title(), List.of(content))
        .pages()
        .get(0);
  }

  private PageContent content(int number) throws SheetException {
    if (number < 1 || number > pages()) {
      throw new SheetException(
          SheetException.Kind.NO_PAGES,
          file.name() + " has no page " + number + "; choose one from 1 to " + pages() + ".");
    }
    PDDocument document = file.document();
    try {
      return PageReader.read(
          document.getPage(number - 1),
          number,
          document.getDocumentCatalog().getOCProperties(),
          settings);
    } catch (PageLimitException e) {
      throw new SheetException(
          SheetException.Kind.TOO_LARGE,
          "Page "
              + number
              + " of "
              + file.name()
              + " "
              + e.getMessage()
              + ", which no datasheet needs; print it to a new PDF and use that.");
    } catch (IOException e) {
      throw new SheetException(
          SheetException.Kind.DAMAGED,
          "Page " + number + " of " + file.name() + " cannot be read; fetch the file again.");
    }
  }

  @Override
  public void close() {
    file.close();
  }
}
