package commonsheet.sheet.ocr;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a line of text says. */
record ReadLine(List<Letter> letters) {
  /**
   * A character of it.
   *
   * @param text one character, or a space
   * @param x where its middle was seen, in pixels of the strip that was read
   * @param confidence 0 to 1
   */
  record Letter(String text, double x, double confidence) {
    boolean isSpace() {
      return text.isBlank();
    }

    boolean isDigit() {
      return text.length() == 1 && Character.isDigit(text.charAt(0));
    }

    boolean isDecimalSign() {
      return text.equals(".") || text.equals(",");
    }
  }

  private static final String DEGREE = "\u00B0";
  private static final String DEGREE_CELSIUS = "\u2103";

  /**
   * The same without a degree sign, or the sign for degree Celsius, before the latter: print with a
   * small circle and a C is often seen as both.
   */
  ReadLine withoutDoubledDegree() {
    List<Letter> kept = new ArrayList<>();
    for (Letter letter : letters) {
      int last = kept.size() - 1;
      if (last >= 0
          && letter.text().equals(DEGREE_CELSIUS)
          && (kept.get(last).text().equals(DEGREE)
              || kept.get(last).text().equals(DEGREE_CELSIUS))) {
        kept.remove(last);
      }
      kept.add(letter);
    }
    return new ReadLine(List.copyOf(kept));
  }

  /** Mean confidence of its characters; 0 for none. */
  double confidence() {
    return letters.stream()
        .filter(letter -> !letter.isSpace())
        .mapToDouble(Letter::confidence)
        .average()
        .orElse(0);
  }

  /** All its characters. */
  String text() {
    return letters.stream().map(Letter::text).collect(Collectors.joining());
  }
}
