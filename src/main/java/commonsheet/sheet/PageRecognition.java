package commonsheet.sheet;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Puts the words of the pages of a file in that are pictures or hold some, and puts right those
 * that are written otherwise than drawn.
 */
final class PageRecognition {
  /**
   * Pages of a sheet that are recognised from their picture at most; a page takes some seconds, and
   * the figures of a cell stand on the first ones.
   */
  private static final int MOST_PICTURES = 12;

  private final PictureReader pictures;
  private final KeptWords kept;
  private final PageWatch watch;

  /**
   * @param kept what was recognised before; null for nothing
   */
  PageRecognition(Recogniser recogniser, KeptWords kept, PageWatch watch) {
    this.pictures = new PictureReader(recogniser);
    this.kept = kept;
    this.watch = watch;
  }

  /**
   * Replaces those pages. A page that cannot be drawn or recognised stays a picture, which the
   * record tells.
   */
  void complete(SheetFile file, List<PageContent> contents) {
    int left = MOST_PICTURES;
    for (int i = 0; i < contents.size() && left > 0; i++) {
      if (Need.of(contents.get(i)) != Need.NOTHING) {
        left--;
        contents.set(i, complete(file, contents.get(i), contents.size()));
      }
    }
  }

  /** What has to be recognised on a page. */
  private enum Need {
    NOTHING,
    /** Single words with characters that the file does not tell. */
    WORDS,
    /** The pictures between the words. */
    PICTURES,
    /** Everything. */
    ALL;

    static Need of(PageContent page) {
      PageKind kind = page.kind();
      if (kind == PageKind.PICTURE || TextTrust.lies(page.body())) {
        return ALL;
      }
      if (kind == PageKind.PARTLY_PICTURE) {
        return PICTURES;
      }
      return SuspectWords.of(page.body()).isEmpty() ? NOTHING : WORDS;
    }
  }

  private PageContent complete(SheetFile file, PageContent page, int pages) {
    PageContent before = kept == null ? null : kept.page(file.sha256(), page.number());
    if (before != null) {
      return before;
    }
    watch.recognising(file.name(), page.number(), pages);
    try {
      PageContent complete = read(file.document(), page);
      if (kept != null) {
        kept.keep(file.sha256(), complete);
      }
      return complete;
    } catch (IOException | RecogniserException unreadable) {
      return page;
    }
  }

  private PageContent read(PDDocument document, PageContent page) throws IOException {
    return switch (Need.of(page)) {
      case NOTHING -> page;
      case WORDS -> pictures.mend(document, page);
      case PICTURES -> pictures.readPictures(document, mended(document, page));
      case ALL -> instead(page, pictures.read(document, page.withoutWords()));
    };
  }

  private PageContent mended(PDDocument document, PageContent page) throws IOException {
    return SuspectWords.of(page.body()).isEmpty() ? page : pictures.mend(document, page);
  }

  /** What was recognised, unless that is nothing. */
  private static PageContent instead(PageContent written, PageContent recognised) {
    return recognised.body().isEmpty() && recognised.aside().isEmpty() ? written : recognised;
  }
}
