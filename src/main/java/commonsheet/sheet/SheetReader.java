package commonsheet.sheet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/**
 * Reads a PDF as evidence: words where they stand, lines in reading order, tables with their cells.
 */
public final class SheetReader {
  private final SheetSettings settings;
  private final Recogniser recogniser;
  private final KeptWords kept;
  private final PageWatch watch;

  /** Reads what is written only; a page that is a picture has no words then. */
  public SheetReader(SheetSettings settings) {
    this(settings, null);
  }

  /**
   * Reads what is written, and the words of pages on which nothing is.
   *
   * @param recogniser of words in pictures, used for such pages only; null for none
   */
  public SheetReader(SheetSettings settings, Recogniser recogniser) {
    this(settings, recogniser, null, (file, page, pages) -> {});
  }

  private SheetReader(
      SheetSettings settings, Recogniser recogniser, KeptWords kept, PageWatch watch) {
    this.settings = settings;
    this.recogniser = recogniser;
    this.kept = kept;
    this.watch = watch;
  }

  /**
   * A reader that recognises no page twice.
   *
   * @param words where they are kept; null to recognise each page anew
   */
  public SheetReader keeping(KeptWords words) {
    return new SheetReader(settings, recogniser, words, watch);
  }

  /** A reader that tells somebody which page it recognises. */
  public SheetReader watchedBy(PageWatch watcher) {
    return new SheetReader(settings, recogniser, kept, watcher);
  }

  /**
   * Makes the first sheet as quick as later ones: the PDF library fills large tables of characters
   * on first use, which a program can spend beside other work.
   */
  public static void prepare() {
    FontTexts.prepare();
  }

  /** Reads a file within the default limits; see {@link #readSheet}. */
  public static Sheet read(Path file) throws SheetException {
    return new SheetReader(SheetSettings.defaults()).readSheet(file);
  }

  /**
   * Reads every page of a file.
   *
   * @throws SheetException if it is no PDF, damaged, locked, without pages or beyond the limits
   */
  public Sheet readSheet(Path file) throws SheetException {
    try (SheetFile pdf = SheetFile.open(file, settings)) {
      List<PageContent> contents = contents(pdf);
      if (recogniser != null) {
        new PageRecognition(recogniser, kept, watch).complete(pdf, contents);
      }
      return SheetBuilder.build(pdf.name(), pdf.sha256(), pdf.title(), contents);
    }
  }

  private List<PageContent> contents(SheetFile pdf) throws SheetException {
    PDDocument document = pdf.document();
    PDOptionalContentProperties layers = document.getDocumentCatalog().getOCProperties();
    List<PageContent> contents = new ArrayList<>();
    for (int i = 0; i < document.getNumberOfPages(); i++) {
      try {
        contents.add(PageReader.read(document.getPage(i), i + 1, layers, settings));
      } catch (PageLimitException e) {
        throw new SheetException(
            SheetException.Kind.TOO_LARGE,
            "Page "
                + (i + 1)
                + " of "
                + pdf.name()
                + " "
                + e.getMessage()
                + ", which no datasheet needs; print it to a new PDF and read that.");
      } catch (IOException e) {
        if (SheetFile.isBeyondMemory(e)) {
          throw SheetFile.unpacksTooLarge(pdf.name());
        }
        throw new SheetException(
            SheetException.Kind.DAMAGED,
            "Page "
                + (i + 1)
                + " of "
                + pdf.name()
                + " cannot be read because its content is damaged; fetch the file again.");
      }
    }
    return contents;
  }
}
