package commonsheet.workbench.place;

import commonsheet.sheet.KeptWords;
import commonsheet.sheet.SheetReader;
import commonsheet.sheet.ocr.PictureWords;
import commonsheet.workbench.folder.Folder;
import commonsheet.workbench.folder.Sheets;

/** Sheets to look at, as long as the workbench is open. */
public final class Places implements AutoCloseable {
  private final PictureWords recogniser = new PictureWords();
  private final PagePictures pictures;
  private final PageWords words;
  private final PlaceRoutes routes;

  /** Sheets of the records of a folder. Makes ready, meanwhile, what the first sheet needs. */
  public Places(Folder folder, Sheets sheets) {
    KeptWords kept = KeptWords.ofMachine();
    pictures = new PagePictures(kept);
    words = new PageWords(recogniser, kept, pictures::forget);
    Thread ahead = new Thread(SheetReader::prepare, "prepare");
    ahead.setDaemon(true);
    ahead.start();
    routes = new PlaceRoutes(new RecordSheets(folder, sheets), pictures, words);
  }

  /** Pictures and sizes of pages. */
  public PagePictures pictures() {
    return pictures;
  }

  /** Words of pages. */
  public PageWords words() {
    return words;
  }

  /** What is answered to requests. */
  public PlaceRoutes routes() {
    return routes;
  }

  @Override
  public void close() {
    pictures.close();
    words.close();
    recogniser.close();
  }
}
