package commonsheet.sheet;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Supplier;

/**
 * Keeps what was recognised in pictures in a folder, so that a sheet that is read a second time
 * takes no longer than one of words. What is kept belongs to one build of the program: another one
 * recognises anew. A folder that cannot be written to and files that are damaged are no failure.
 */
public final class KeptWords {
  /** Some two thousand pages; a page takes 5 to 30 kB. */
  private static final long MOST_BYTES = 64L << 20;

  private final KeptFiles files;
  private final Supplier<String> engine;
  private String version;

  KeptWords(KeptFiles files, Supplier<String> engine) {
    this.files = files;
    this.engine = engine;
  }

  /**
   * Keeps up to 64 MiB in a folder, which is made when there is something to keep.
   *
   * @param folder that nothing else uses
   */
  public static KeptWords in(Path folder) {
    return new KeptWords(new KeptFiles(folder, MOST_BYTES), EngineVersion::own);
  }

  /**
   * Keeps them where this machine keeps such things: in the folder that the environment variable
   * {@code COMMONSHEET_CACHE} or the system property {@code commonsheet.cache} names, otherwise in
   * the folder for caches of the platform; docs/ocr.md tells which.
   *
   * @return null where both are turned off by the value {@code off}, or no place is known
   */
  public static KeptWords ofMachine() {
    Path folder = KeptFolder.ofMachine();
    return folder == null ? null : in(folder.resolve("words"));
  }

  /** A recogniser that first looks whether the same pixels were recognised before. */
  public Recogniser before(Recogniser recogniser) {
    return new Remembering(recogniser);
  }

  /** A page as it was recognised before; null if it was not. */
  PageContent page(String sha256, int number) {
    String key = key("page " + sha256 + " " + number);
    byte[] bytes = key == null ? null : files.find(key);
    try {
      return bytes == null ? null : PageBytes.page(bytes);
    } catch (IOException damaged) {
      files.forget(key);
      return null;
    }
  }

  void keep(String sha256, PageContent page) {
    String key = key("page " + sha256 + " " + page.number());
    if (key != null) {
      files.keep(key, PageBytes.of(page));
    }
  }

  /** The key of something this program recognised; null where its version is not known. */
  private synchronized String key(String what) {
    if (version == null) {
      String own = engine.get();
      version = own == null ? "" : own;
    }
    return version.isEmpty() ? null : version + " " + what;
  }

  private final class Remembering implements Recogniser {
    private final Recogniser recogniser;

    Remembering(Recogniser recogniser) {
      this.recogniser = recogniser;
    }

    @Override
    public List<Word> words(PagePixels picture) {
      return words("words " + digest(picture), () -> recogniser.words(picture));
    }

    @Override
    public List<Word> words(PagePixels picture, List<TextPlace> places) {
      return words(
          "places " + digest(picture) + " " + places, () -> recogniser.words(picture, places));
    }

    private List<Word> words(String what, Supplier<List<Word>> work) {
      String key = key(what);
      byte[] bytes = key == null ? null : files.find(key);
      if (bytes != null) {
        try {
          return PageBytes.words(bytes);
        } catch (IOException damaged) {
          files.forget(key);
        }
      }
      List<Word> words = work.get();
      if (key != null) {
        files.keep(key, PageBytes.of(words));
      }
      return words;
    }
  }

  /** A name for the pixels of a picture and its place on the page. */
  private static String digest(PagePixels picture) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      BufferedImage image = picture.image();
      int width = image.getWidth();
      int[] row = new int[width];
      ByteBuffer bytes = ByteBuffer.allocate(width * Integer.BYTES);
      for (int y = 0; y < image.getHeight(); y++) {
        image.getRGB(0, y, width, 1, row, 0, width);
        bytes.clear();
        bytes.asIntBuffer().put(row);
        digest.update(bytes.array());
      }
      return HexFormat.of().formatHex(digest.digest()) + " " + width + " " + picture.area();
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
