package commonsheet.chart.text;

import java.text.Normalizer;
import java.util.Locale;

/** Text of a chart with its look-alike characters folded into one. */
public final class ChartText {
  private ChartText() {}

  /** Full-width forms, the many dashes and degree signs as one character each. */
  public static String folded(String printed) {
    return Normalizer.normalize(printed.replace('º', '°').replace('˚', '°'), Normalizer.Form.NFKC)
        .replaceAll("[‐‑‒–—―−﹣➖]", "-")
        .replaceAll("[◦∘○]", "°")
        .replace('\u00a0', ' ')
        .strip();
  }

  public static String lower(String printed) {
    return folded(printed).toLowerCase(Locale.ROOT);
  }

  /** A letter of an alphabet; ideographs stand without spaces and are none. */
  public static boolean isAlphabetic(char c) {
    return Character.isLetter(c) && !Character.isIdeographic(c) && !isKana(c);
  }

  private static boolean isKana(char c) {
    return c >= 0x3040 && c <= 0x30ff;
  }
}
