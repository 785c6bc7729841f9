package commonsheet.sheet;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * How a camera was held: cameras store what the sensor saw and note in the Exif part of the file
 * how to turn it (Exif 2.3, JEITA CP-3451C, tag 0x0112; segment APP1 of a JPEG file).
 *
 * @param quarters quarter turns clockwise by which the picture comes upright
 * @param mirrored whether it is mirrored left to right before that
 */
record Orientation(int quarters, boolean mirrored) {
  private static final Orientation UPRIGHT = new Orientation(0, false);
  private static final int APP1 = 0xFFE1;
  private static final int START_OF_SCAN = 0xFFDA;
  private static final int TAG = 0x0112;
  private static final int ENTRY = 12;
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

  /** What a file says; upright where it says nothing or is no JPEG. */
  static Orientation of(byte[] file) {
    ByteBuffer bytes = ByteBuffer.wrap(file);
    int at = 2;
    while (at + 4 <= file.length && file[at] == (byte) 0xFF) {
      int marker = bytes.getShort(at) & 0xFFFF;
      int length = bytes.getShort(at + 2) & 0xFFFF;
      if (marker == START_OF_SCAN) {
        return UPRIGHT;
      }
      if (marker == APP1 && holds(bytes, at + 4)) {
        int start = at + 4 + EXIF.length;
        int end = Math.min(at + 2 + length, file.length);
        return start < end ? ofExif(bytes.slice(start, end - start)) : UPRIGHT;
      }
      at += 2 + length;
    }
    return UPRIGHT;
  }

  private static boolean holds(ByteBuffer bytes, int at) {
    return at + EXIF.length <= bytes.capacity()
        && bytes.slice(at, EXIF.length).equals(ByteBuffer.wrap(EXIF));
  }

  /** The entry in the first directory of a TIFF header and what follows it. */
  private static Orientation ofExif(ByteBuffer tiff) {
    if (tiff.capacity() < 8) {
      return UPRIGHT;
    }
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = tiff.getInt(4);
    if (directory < 8 || directory + 2 > tiff.capacity()) {
      return UPRIGHT;
    }
    int entries = tiff.getShort(directory) & 0xFFFF;
    for (int i = 0; i < entries; i++) {
      int entry = directory + 2 + i * ENTRY;
      if (entry + ENTRY > tiff.capacity()) {
        return UPRIGHT;
      }
      if ((tiff.getShort(entry) & 0xFFFF) == TAG) {
        return ofValue(tiff.getShort(entry + 8));
      }
    }
    return UPRIGHT;
  }

  private static Orientation ofValue(int value) {
    return switch (value) {
      case 2 -> new Orientation(0, true);
      case 3 -> new Orientation(2, false);
      case 4 -> new Orientation(2, true);
      case 5 -> new Orientation(3, true);
      case 6 -> new Orientation(1, false);
      case 7 -> new Orientation(1, true);
      case 8 -> new Orientation(3, false);
      default -> UPRIGHT;
    };
  }

  /** The picture as the one who took it saw it. */
  BufferedImage applied(BufferedImage picture) {
    return OpenSheet.turned(mirrored ? mirrored(picture) : picture, quarters);
  }

  private static BufferedImage mirrored(BufferedImage picture) {
    int width = picture.getWidth();
    int height = picture.getHeight();
    BufferedImage mirrored = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = mirrored.createGraphics();
    graphics.drawImage(picture, width, 0, -width, height, null);
    graphics.dispose();
    return mirrored;
  }
}
