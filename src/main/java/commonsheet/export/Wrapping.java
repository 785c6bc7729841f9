package commonsheet.export;

import java.util.ArrayList;
import java.util.List;

/** Breaking text into lines of a terminal, where East Asian wide characters take two columns. */
public final class Wrapping {
  private static final String HANG = "  ";

  private Wrapping() {}

  /** Columns that the text takes on a terminal. */
  static int width(String text) {
    return text.codePoints().map(Wrapping::width).sum();
  }

  /** Lines of at most {@code width} columns, broken at spaces, else where it must be. */
  public static List<String> wrap(String text, int width) {
    return wrap(text, width, "");
  }

  /** The same with all lines but the first set in, so that the next entry can be told from it. */
  static List<String> wrapHanging(String text, int width) {
    return wrap(text, width, HANG);
  }

  private static List<String> wrap(String text, int width, String hang) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int used = 0;
    boolean blank = true;
    for (String word : text.split(" ")) {
      if (!blank && used + 1 + width(word) > width) {
        lines.add(line.toString());
        line = new StringBuilder(hang);
        used = hang.length();
        blank = true;
      }
      line.append(blank ? "" : " ");
      used += blank ? 0 : 1;
      for (int point : word.codePoints().toArray()) {
        if (!blank && used + width(point) > width) {
          lines.add(line.toString());
          line = new StringBuilder(hang);
          used = hang.length();
        }
        line.appendCodePoint(point);
        used += width(point);
        blank = false;
      }
    }
    lines.add(line.toString());
    return lines;
  }

  /** After the classes W and F of Unicode Standard Annex 11 for the scripts that sheets use. */
  private static int width(int point) {
    int type = Character.getType(point);
    if (type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT) {
      return 0;
    }
    boolean wide =
        (point >= 0x1100 && point <= 0x115F)
            || (point >= 0x2E80 && point <= 0xA4CF && point != 0x303F)
            || (point >= 0xAC00 && point <= 0xD7A3)
            || (point >= 0xF900 && point <= 0xFAFF)
            || (point >= 0xFE30 && point <= 0xFE6F)
            || (point >= 0xFF00 && point <= 0xFF60)
            || (point >= 0xFFE0 && point <= 0xFFE6)
            || (point >= 0x20000 && point <= 0x3FFFD);
    return wide ? 2 : 1;
  }
}
