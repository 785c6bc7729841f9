package commonsheet.sheet.ocr;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.FloatBuffer;

/** A picture as a network takes it: blue, green and red planes of normalised values. */
final class Planes {
  private final FloatBuffer buffer;
  private final int width;
  private final int height;
  private final float[] mean;
  private final float[] spread;

  /**
   * Room for a picture; what it does not fill is zero, the middle of the normalised range.
   *
   * @param mean of blue, green and red, 0 to 1, which becomes 0
   * @param spread which becomes 1
   */
  Planes(int width, int height, float[] mean, float[] spread) {
    this.width = width;
    this.height = height;
    this.mean = mean;
    this.spread = spread;
    this.buffer =
        ByteBuffer.allocateDirect(3 * width * height * Float.BYTES)
            .order(ByteOrder.nativeOrder())
            .asFloatBuffer();
  }

  /** Puts a picture, not larger than the room, at the upper left. */
  void put(Pixels picture) {
    int plane = width * height;
    for (int row = 0; row < picture.height(); row++) {
      for (int column = 0; column < picture.width(); column++) {
        int at = row * width + column;
        buffer.put(at, normal(picture.blue(column, row), 0));
        buffer.put(at + plane, normal(picture.green(column, row), 1));
        buffer.put(at + 2 * plane, normal(picture.red(column, row), 2));
      }
    }
  }

  private float normal(int value, int channel) {
    return (value / 255f - mean[channel]) / spread[channel];
  }

  FloatBuffer buffer() {
    return buffer;
  }
}
