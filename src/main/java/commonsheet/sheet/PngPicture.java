package commonsheet.sheet;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Pixels as a PNG file (ISO/IEC 15948), written for speed: pages are mostly paper, which packs well
 * at the first level, and the platform's writer takes several times as long as drawing the page.
 */
final class PngPicture {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

  private static final int BITS = 8;
  private static final int GREY = 0;
  private static final int COLOURED = 2;

  /** Each byte less the one above it: lines of paper and of rulings become zeros. */
  private static final byte FILTER_UP = 2;

  private static final int BUFFER = 64 * 1024;

  private PngPicture() {}

  /** The file. Pictures without colour take a byte a pixel. */
  static byte[] of(BufferedImage image) throws IOException {
    int width = image.getWidth();
    int height = image.getHeight();
    boolean grey = isGrey(image);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(BUFFER);
    DataOutputStream file = new DataOutputStream(bytes);
    file.write(SIGNATURE);
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    DataOutputStream header = new DataOutputStream(head);
    header.writeInt(width);
    header.writeInt(height);
    header.write(new byte[] {BITS, (byte) (grey ? GREY : COLOURED), 0, 0, 0});
    chunk(file, "IHDR", head.toByteArray());
    chunk(file, "IDAT", packed(image, grey ? 1 : 3));
    chunk(file, "IEND", new byte[0]);
    return bytes.toByteArray();
  }

  private static boolean isGrey(BufferedImage image) {
    int[] row = new int[image.getWidth()];
    for (int y = 0; y < image.getHeight(); y++) {
      image.getRGB(0, y, row.length, 1, row, 0, row.length);
      for (int pixel : row) {
        int green = pixel >> 8 & 0xff;
        if ((pixel >> 16 & 0xff) != green || (pixel & 0xff) != green) {
          return false;
        }
      }
    }
    return true;
  }

  private static byte[] packed(BufferedImage image, int channels) throws IOException {
    int width = image.getWidth();
    int[] row = new int[width];
    byte[] above = new byte[width * channels];
    byte[] own = new byte[width * channels];
    byte[] line = new byte[1 + width * channels];
    line[0] = FILTER_UP;
    Deflater deflater = new Deflater(Deflater.BEST_SPEED);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(BUFFER);
    try (DeflaterOutputStream out = new DeflaterOutputStream(bytes, deflater, BUFFER)) {
      for (int y = 0; y < image.getHeight(); y++) {
        image.getRGB(0, y, width, 1, row, 0, width);
        bytesOf(row, channels, own);
        for (int i = 0; i < own.length; i++) {
          line[1 + i] = (byte) (own[i] - above[i]);
        }
        out.write(line);
        byte[] next = above;
        above = own;
        own = next;
      }
    } finally {
      deflater.end();
    }
    return bytes.toByteArray();
  }

  private static void bytesOf(int[] row, int channels, byte[] bytes) {
    int at = 0;
    for (int pixel : row) {
      if (channels > 1) {
        bytes[at++] = (byte) (pixel >> 16);
        bytes[at++] = (byte) (pixel >> 8);
      }
      bytes[at++] = (byte) pixel;
    }
  }

  private static void chunk(DataOutputStream file, String type, byte[] data) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(name);
    sum.update(data);
    file.writeInt(data.length);
    file.write(name);
    file.write(data);
    file.writeInt((int) sum.getValue());
  }
}
