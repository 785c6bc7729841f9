package commonsheet.sheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;

/** An opened PDF or picture file, with what can be said of the file as a whole. */
final class SheetFile implements AutoCloseable {
  /**
   * Bytes at either end of a file in which its first and last marks must stand (ISO 32000-1, annex
   * H).
   */
  private static final int MARK_WITHIN = 1024;

  /** Memory for unpacked streams before they go to a temporary file. */
  private static final long MEMORY = 16L << 20;

  private final String name;
  private final String sha256;
  private final PDDocument document;

  private SheetFile(String name, String sha256, PDDocument document) {
    this.name = name;
    this.sha256 = sha256;
    this.document = document;
  }

  /** Opens a file, or says in one sentence why it cannot be read. */
  static SheetFile open(Path path, SheetSettings settings) throws SheetException {
    String name = String.valueOf(path.getFileName());
    byte[] bytes = bytes(path, name);
    PDDocument document;
    if (PictureFile.isOne(bytes)) {
      document = picture(bytes, name, settings);
    } else {
      checkStart(bytes, name);
      document = load(bytes, name, settings);
    }
    SheetFile file = new SheetFile(name, sha256(bytes), document);
    try {
      file.checkPages(settings);
    } catch (SheetException e) {
      file.close();
      throw e;
    }
    return file;
  }

  String name() {
    return name;
  }

  String sha256() {
    return sha256;
  }

  PDDocument document() {
    return document;
  }

  /** The PDF's own title, or null. */
  String title() {
    String title = document.getDocumentInformation().getTitle();
    return title == null || title.isBlank() ? null : title.strip();
  }

  @Override
  public void close() {
    org.apache.pdfbox.io.IOUtils.closeQuietly(document);
  }

  private static byte[] bytes(Path path, String name) throws SheetException {
    if (!Files.exists(path)) {
      throw new SheetException(
          SheetException.Kind.NOT_FOUND, name + " does not exist; check the path.");
    }
    if (Files.isDirectory(path)) {
      throw new SheetException(
          SheetException.Kind.NOT_A_PDF, name + " is a folder; name a sheet in it.");
    }
    try {
      return Files.readAllBytes(path);
    } catch (IOException e) {
      throw new SheetException(
          SheetException.Kind.NOT_FOUND, name + " cannot be opened; check that you may read it.");
    }
  }

  private static void checkStart(byte[] bytes, String name) throws SheetException {
    if (bytes.length == 0) {
      throw new SheetException(
          SheetException.Kind.NOT_A_PDF, name + " is empty; fetch the sheet again.");
    }
    if (find(bytes, "%PDF-", 0, MARK_WITHIN) < 0) {
      throw new SheetException(
          SheetException.Kind.NOT_A_PDF,
          name
              + " is neither a PDF nor a PNG, JPEG or TIFF picture, whatever its name says; give the"
              + " sheet as one of these.");
    }
  }

  private static PDDocument picture(byte[] bytes, String name, SheetSettings settings)
      throws SheetException {
    try {
      return PictureFile.document(bytes, settings.maximumPages());
    } catch (IOException e) {
      throw new SheetException(
          SheetException.Kind.DAMAGED,
          name
              + " is a picture that is damaged or of a kind that cannot be decoded; save it anew as"
              + " PNG and read that.");
    }
  }

  private static PDDocument load(byte[] bytes, String name, SheetSettings settings)
      throws SheetException {
    boolean cut = isCut(bytes);
    try {
      MemoryUsageSetting memory =
          MemoryUsageSetting.setupMixed(MEMORY, settings.maximumStreamBytes());
      PDDocument document =
          PDDocument.load(new ByteArrayInputStream(bytes), "", null, null, memory);
      if (cut) {
        document.close();
        throw damaged(name);
      }
      return document;
    } catch (InvalidPasswordException e) {
      throw new SheetException(
          SheetException.Kind.ENCRYPTED,
          name + " asks for a password; save a copy without one and read that.");
    } catch (IOException e) {
      throw isBeyondMemory(e) ? unpacksTooLarge(name) : damaged(name);
    }
  }

  /**
   * Whether the library stopped because streams took more than it was allowed; it tells by its
   * message only.
   */
  static boolean isBeyondMemory(IOException e) {
    return String.valueOf(e.getMessage()).contains("scratch file memory exceeded");
  }

  static SheetException unpacksTooLarge(String name) {
    return new SheetException(
        SheetException.Kind.TOO_LARGE,
        name + " unpacks to far more than a datasheet holds; print it to a new PDF and read that.");
  }

  private static SheetException damaged(String name) {
    return new SheetException(
        SheetException.Kind.DAMAGED,
        name + " is damaged or cut short, so parts of it may be missing; fetch it again.");
  }

  /** Whether the end of the file is missing: no end mark, or objects after the last one. */
  private static boolean isCut(byte[] bytes) {
    int from = Math.max(0, bytes.length - MARK_WITHIN);
    if (find(bytes, "%%EOF", from, bytes.length) >= 0) {
      return false;
    }
    int start = find(bytes, "startxref", from, bytes.length);
    if (start >= 0 && find(bytes, "%%E", start, bytes.length) >= 0) {
      return false;
    }
    int last = -1;
    for (int at = find(bytes, "%%EOF", 0, bytes.length);
        at >= 0;
        at = find(bytes, "%%EOF", at + 5, bytes.length)) {
      last = at;
    }
    return last < 0 || find(bytes, " obj", last, bytes.length) >= 0;
  }

  private static int find(byte[] bytes, String mark, int from, int to) {
    byte[] wanted = mark.getBytes(StandardCharsets.US_ASCII);
    int end = Math.min(to, bytes.length) - wanted.length;
    for (int i = from; i <= end; i++) {
      int k = 0;
      while (k < wanted.length && bytes[i + k] == wanted[k]) {
        k++;
      }
      if (k == wanted.length) {
        return i;
      }
    }
    return -1;
  }

  private void checkPages(SheetSettings settings) throws SheetException {
    int pages = document.getNumberOfPages();
    if (pages == 0) {
      throw new SheetException(
          SheetException.Kind.NO_PAGES, name + " has no pages; fetch the sheet again.");
    }
    if (pages > settings.maximumPages()) {
      throw new SheetException(
          SheetException.Kind.TOO_LARGE,
          name
              + " has "
              + pages
              + " pages, more than the "
              + settings.maximumPages()
              + " a datasheet may have; extract the pages of one cell first.");
    }
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
