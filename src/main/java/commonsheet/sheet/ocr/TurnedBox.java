package commonsheet.sheet.ocr;

import commonsheet.sheet.Box;
import java.util.Arrays;

/**
 * A rectangle in a picture that may stand at an angle, in pixels with y downwards.
 *
 * @param x of its middle
 * @param y of its middle
 * @param length along the direction of reading
 * @param height across it
 * @param angle of the direction of reading in radians, clockwise as seen, 0 for left to right
 */
record TurnedBox(double x, double y, double length, double height, double angle) {
  static TurnedBox level(double left, double top, double width, double height) {
    return new TurnedBox(left + width / 2, top + height / 2, width, height, 0);
  }

  double area() {
    return length * height;
  }

  /** The same with each side moved outwards. */
  TurnedBox grown(double by) {
    return new TurnedBox(x, y, length + 2 * by, height + 2 * by, angle);
  }

  TurnedBox scaled(double factor) {
    return new TurnedBox(x * factor, y * factor, length * factor, height * factor, angle);
  }

  /** The same place read in another direction, as {@link commonsheet.sheet.Word#turn} has it. */
  TurnedBox read(int turn) {
    return switch (turn) {
      case 90 -> readUpwards();
      case 180 -> new TurnedBox(x, y, length, height, angle + Math.PI);
      case 270 -> readDownwards();
      default -> this;
    };
  }

  /** The same place read from bottom to top of what was left to right. */
  TurnedBox readUpwards() {
    return new TurnedBox(x, y, height, length, angle - Math.PI / 2);
  }

  /** The same place read from top to bottom of what was left to right. */
  TurnedBox readDownwards() {
    return new TurnedBox(x, y, height, length, angle + Math.PI / 2);
  }

  /** Column in the picture of a place in the box, measured from its first corner. */
  double column(double along, double down) {
    return x + (along - length / 2) * Math.cos(angle) - (down - height / 2) * Math.sin(angle);
  }

  /** Row in the picture of a place in the box, measured from its first corner. */
  double row(double along, double down) {
    return y + (along - length / 2) * Math.sin(angle) + (down - height / 2) * Math.cos(angle);
  }

  /** The level box around it, in pixels of the picture. */
  Box around() {
    return part(0, length, 0, height);
  }

  /** The level box around a part of it, in pixels of the picture. */
  Box part(double from, double to, double top, double bottom) {
    double[] columns = {
      column(from, top), column(to, top), column(from, bottom), column(to, bottom)
    };
    double[] rows = {row(from, top), row(to, top), row(from, bottom), row(to, bottom)};
    Arrays.sort(columns);
    Arrays.sort(rows);
    return new Box(columns[0], rows[0], columns[3] - columns[0], rows[3] - rows[0]);
  }
}
