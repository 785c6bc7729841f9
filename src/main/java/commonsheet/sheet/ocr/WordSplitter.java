package commonsheet.sheet.ocr;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits a line into words: at the spaces that were read, and at gaps as wide as a space is. The
 * network often leaves spaces out, and joins labels that stand in one row.
 */
final class WordSplitter {
  /**
   * Gaps from which words are parted, in font sizes. A space is 0.28 and what letters keep free
   * beside them about 0.1; between two digits 1 there is 0.29, the widest gap within a word, and
   * between two letters 0.16 (Helvetica).
   */
  private static final double BETWEEN_DIGITS = 0.38;

  private static final double BESIDE_DIGIT = 0.32;
  private static final double BETWEEN_LETTERS = 0.26;

  /** Beside a decimal sign, which may itself leave no ink in print of few pixels. */
  private static final double BESIDE_DECIMAL_SIGN = 0.85;

  private WordSplitter() {}

  /**
   * A word in a strip.
   *
   * @param from first column of its ink
   * @param to column after its last
   * @param confidence that of its least sure character
   */
  record Part(String text, double from, double to, double confidence) {}

  static List<Part> split(ReadLine line, StripInk ink, int width) {
    double size = TypeSize.of(line.text(), ink.bottom() - ink.top());
    List<ReadLine.Letter> letters = line.letters();
    List<Part> parts = new ArrayList<>();
    List<ReadLine.Letter> word = new ArrayList<>();
    double start = 0;
    double last = 0;
    boolean space = false;
    for (int i = 0; i < letters.size(); i++) {
      ReadLine.Letter letter = letters.get(i);
      if (letter.isSpace()) {
        space = true;
        continue;
      }
      if (!word.isEmpty()) {
        StripInk.Gap gap = ink.widestGap(last, place(letters, i, ink));
        boolean inNumber = isInNumber(word, letters, i);
        if (space && !inNumber || gap.width() > size * limit(word, letter, inNumber)) {
          parts.add(part(word, ink, start, gap.from()));
          word.clear();
          start = gap.to();
        }
      }
      word.add(letter);
      last = place(letters, i, ink);
      space = false;
    }
    if (!word.isEmpty()) {
      parts.add(part(word, ink, start, width));
    }
    return parts;
  }

  /**
   * Where a letter is, for measuring gaps. The network tells places to some eight columns only, so
   * that a narrow letter beside a space can seem to stand in the space, which would then count as a
   * gap on both sides of the letter. It stands on the nearest ink.
   */
  private static double place(List<ReadLine.Letter> letters, int i, StripInk ink) {
    double x = letters.get(i).x();
    int before = ink.endBefore((int) x + 1) - 1;
    int after = ink.next((int) x);
    if (i + 1 < letters.size() && letters.get(i + 1).isSpace()) {
      return Math.min(x, before);
    }
    if (i > 0 && letters.get(i - 1).isSpace()) {
      return Math.max(x, after);
    }
    boolean isNearerBefore = after < 0 || before >= 0 && x - before <= after - x;
    return isNearerBefore ? Math.max(0, Math.min(x, before)) : Math.max(x, after);
  }

  /**
   * Whether a decimal sign with a digit on both sides stands before or after; a space seen there is
   * the sign's own room.
   */
  private static boolean isInNumber(
      List<ReadLine.Letter> word, List<ReadLine.Letter> letters, int next) {
    ReadLine.Letter before = word.get(word.size() - 1);
    ReadLine.Letter after = letters.get(next);
    if (before.isDecimalSign()) {
      return after.isDigit() && word.size() > 1 && word.get(word.size() - 2).isDigit();
    }
    return before.isDigit()
        && after.isDecimalSign()
        && next + 1 < letters.size()
        && letters.get(next + 1).isDigit();
  }

  /** A point or comma belongs to what stands before it. */
  private static double limit(List<ReadLine.Letter> word, ReadLine.Letter after, boolean inNumber) {
    ReadLine.Letter before = word.get(word.size() - 1);
    if (inNumber || after.isDecimalSign()) {
      return BESIDE_DECIMAL_SIGN;
    }
    if (before.isDigit() && after.isDigit()) {
      return BETWEEN_DIGITS;
    }
    return before.isDigit() || after.isDigit() ? BESIDE_DIGIT : BETWEEN_LETTERS;
  }

  private static Part part(List<ReadLine.Letter> letters, StripInk ink, double start, double end) {
    StringBuilder text = new StringBuilder();
    double confidence = 1;
    for (ReadLine.Letter letter : letters) {
      text.append(letter.text());
      confidence = Math.min(confidence, letter.confidence());
    }
    double from = ink.next((int) start);
    double to = ink.endBefore((int) Math.ceil(end));
    boolean seen = from >= start && to > from;
    return new Part(text.toString(), seen ? from : start, seen ? to : end, confidence);
  }
}
