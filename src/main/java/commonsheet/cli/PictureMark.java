package commonsheet.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;

/**
 * Marks a PNG picture as made by this program for a record, so that it can later be told from
 * pictures of other origin: a tEXt chunk with the keyword Software behind the header (ISO/IEC
 * 15948, 11.3.4.3).
 */
final class PictureMark {
  private static final int SIGNATURE = 8;

  /** Length, type and check sum of a chunk, in bytes. */
  private static final int AROUND_DATA = 12;

  /** Longest mark that is looked for: a keyword and the longest name of a record. */
  private static final int LONGEST = 1000;

  private PictureMark() {}

  /** A picture with the mark. */
  static byte[] on(byte[] png, String recordId) throws IOException {
    byte[] data = data(recordId);
    ByteArrayOutputStream marked =
        new ByteArrayOutputStream(png.length + data.length + AROUND_DATA);
    int behindHeader = behindHeader(png);
    marked.write(png, 0, behindHeader);
    DataOutputStream chunk = new DataOutputStream(marked);
    byte[] type = "tEXt".getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(type);
    sum.update(data);
    chunk.writeInt(data.length);
    chunk.write(type);
    chunk.write(data);
    chunk.writeInt((int) sum.getValue());
    chunk.write(png, behindHeader, png.length - behindHeader);
    return marked.toByteArray();
  }

  /** Whether a file is a picture that was marked for a record. */
  static boolean isOn(Path file, String recordId) {
    byte[] expected = data(recordId);
    try (InputStream in = Files.newInputStream(file)) {
      byte[] start = in.readNBytes(SIGNATURE + AROUND_DATA + 13 + AROUND_DATA + LONGEST);
      int from = behindHeader(start);
      DataInputStream chunk =
          new DataInputStream(new ByteArrayInputStream(start, from, start.length - from));
      int length = chunk.readInt();
      byte[] type = chunk.readNBytes(4);
      return new String(type, StandardCharsets.US_ASCII).equals("tEXt")
          && length == expected.length
          && Arrays.equals(expected, chunk.readNBytes(length));
    } catch (IOException | IndexOutOfBoundsException | NegativeArraySizeException other) {
      return false;
    }
  }

  private static byte[] data(String recordId) {
    return ("Software\0Commonsheet, chart of " + recordId).getBytes(StandardCharsets.ISO_8859_1);
  }

  private static int behindHeader(byte[] png) throws IOException {
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(png, SIGNATURE, 4))) {
      return SIGNATURE + AROUND_DATA + in.readInt();
    }
  }
}
