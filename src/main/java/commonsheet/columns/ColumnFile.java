package commonsheet.columns;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A text file of the user's, within limits. */
public final class ColumnFile {
  /** Ten samples a second for a week are about as much. */
  private static final long MOST_BYTES = 256L << 20;

  private static final int BLOCK = 1 << 16;

  private final Path path;

  private ColumnFile(Path path) {
    this.path = path;
  }

  /**
   * A file that can be read.
   *
   * @throws ColumnException where it is none, empty, or larger than 256 MB
   */
  public static ColumnFile of(Path path) throws ColumnException {
    ColumnFile file = new ColumnFile(path);
    if (!Files.isRegularFile(path)) {
      throw file.wrong("there is no such file; check the name");
    }
    try {
      long size = Files.size(path);
      if (size == 0) {
        throw file.wrong("the file is empty");
      }
      if (size > MOST_BYTES) {
        throw file.wrong(
            "the file has "
                + (size >> 20)
                + " MB, more than the 256 MB that are read; cut it to what is wanted");
      }
    } catch (IOException failure) {
      throw file.unreadable();
    }
    return file;
  }

  /** The file's name without its folder. */
  public String name() {
    return path.getFileName().toString();
  }

  /** The name without its ending. */
  public String stem() {
    String name = name();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  /** The text from the start; UTF-16 by its mark, otherwise UTF-8, whose bad bytes are replaced. */
  Reader text() throws IOException {
    InputStream in = new BufferedInputStream(Files.newInputStream(path), BLOCK);
    in.mark(2);
    int first = in.read();
    int second = in.read();
    in.reset();
    boolean utf16 = (first == 0xFF && second == 0xFE) || (first == 0xFE && second == 0xFF);
    Charset charset = utf16 ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    return new InputStreamReader(in, charset);
  }

  /** SHA-256 of the file, lower-case hexadecimal. */
  public String sha256() throws ColumnException {
    try (InputStream in = Files.newInputStream(path)) {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      byte[] block = new byte[BLOCK];
      for (int read = in.read(block); read >= 0; read = in.read(block)) {
        digest.update(block, 0, read);
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (IOException failure) {
      throw unreadable();
    } catch (NoSuchAlgorithmException absent) {
      throw new IllegalStateException("every Java platform has SHA-256", absent);
    }
  }

  public ColumnException unreadable() {
    return wrong("the file cannot be read; check that you may read it");
  }

  public ColumnException wrong(String sentence) {
    return new ColumnException(path + ": " + sentence);
  }

  public ColumnException wrong(long line, String sentence) {
    return new ColumnException(path + ", line " + line + ": " + sentence);
  }
}
