package commonsheet.sheet.ocr;

/**
 * Estimates the font size of a line from the height of its ink. Heights are those of common sans
 * serif print in font sizes (Helvetica: capitals 0.72, x 0.52, below the line 0.21).
 */
final class TypeSize {
  private static final double CAPITAL = 0.72;
  private static final double SMALL = 0.52;
  private static final double BELOW = 0.21;

  /** An ideograph fills nearly its whole square. */
  private static final double IDEOGRAPH = 0.92;

  private static final String LOW = "gjpqy,;()[]{}|_Qµμ（），；";
  private static final String FLAT = "acegmnopqrsuvwxyz.,:;-+~=μµ";

  private TypeSize() {}

  /** The font size, in the unit of the height. */
  static double of(String text, double inkHeight) {
    if (text.codePoints().anyMatch(Character::isIdeographic)) {
      return inkHeight / IDEOGRAPH;
    }
    boolean low = text.codePoints().anyMatch(c -> LOW.indexOf(c) >= 0);
    boolean flat = text.codePoints().allMatch(c -> FLAT.indexOf(c) >= 0);
    return inkHeight / ((flat ? SMALL : CAPITAL) + (low ? BELOW : 0));
  }
}
