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
  /**
   * Pages of a sheet that are recognised from their picture at most; a page takes some seconds, and
   * the figures of a cell stand on the first ones.
   */
  private static final int MOST_PICTURES = 12;

  private final SheetSettings settings;
  private final Recogniser recogniser;

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
    this.settings = settings;
    this.recogniser = recogniser;
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
        recognise(pdf.document(), contents);
      }
      return SheetBuilder.build(pdf.name(), pdf.sha256(), pdf.title(), contents);
    }
  }

  /**
   * Puts the words of picture pages in. A page that cannot be drawn or recognised stays a picture,
   * which the record tells.
   */
  private void recognise(PDDocument document, List<PageContent> contents) {
    PictureReader pictures = new PictureReader(recogniser);
    int left = MOST_PICTURES;
    for (int i = 0; i < contents.size() && left > 0; i++) {
      PageContent page = contents.get(i);
      PageKind kind = page.kind();
      if (kind == PageKind.PICTURE || kind == PageKind.PARTLY_PICTURE) {
        left--;
        try {
          contents.set(
              i,
              kind == PageKind.PICTURE
                  ? pictures.read(document, page)
                  : pictures.readPictures(document, page));
        } catch (IOException | RecogniserException unreadable) {
          contents.set(i, page);
        }
      }
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
