package commonsheet.sheet;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Puts the words of the pages of a file in that are pictures or hold some. */
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
      PageKind kind = contents.get(i).kind();
      if (kind == PageKind.PICTURE || kind == PageKind.PARTLY_PICTURE) {
        left--;
        contents.set(i, complete(file, contents.get(i), contents.size()));
      }
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
    return page.kind() == PageKind.PICTURE
        ? pictures.read(document, page)
        : pictures.readPictures(document, page);
  }
}
