package commonsheet.check;

/** Slips of the hand and of recognition, told by the ratio of two figures that should be alike. */
final class Slips {
  /** How near to a power of ten a ratio is to tell a lost point or a prefix, as a share. */
  private static final double NEAR = 0.25;

  private Slips() {}

  /** The power of ten, from 10 to 1000, that a ratio or its inverse is near to; 0 for none. */
  static int factor(double ratio) {
    double size = ratio < 1 ? 1 / ratio : ratio;
    for (int factor : new int[] {10, 100, 1000}) {
      if (size > factor * (1 - NEAR) && size < factor * (1 + NEAR)) {
        return factor;
      }
    }
    return 0;
  }

  /** What to do: look for the factor where there is one, else something else. */
  static String hint(double ratio, String otherwise) {
    int factor = factor(ratio);
    return factor == 0
        ? otherwise
        : "one is about "
            + factor
            + " times the other, so look for a lost decimal sign or a prefix such as m";
  }

  /** Whether two numbers are the same but for two neighbouring digits that are exchanged. */
  static boolean areSwapped(double one, double other) {
    String a = digits(one);
    String b = digits(other);
    if (a.equals(b) || a.length() != b.length()) {
      return false;
    }
    for (int i = 0; i + 1 < a.length(); i++) {
      String swapped = a.substring(0, i) + a.charAt(i + 1) + a.charAt(i) + a.substring(i + 2);
      if (swapped.equals(b)) {
        return true;
      }
    }
    return false;
  }

  /** With the decimal point, so that 26.5 and 2.65 are not taken for one another. */
  private static String digits(double number) {
    return new java.math.BigDecimal(String.valueOf(number)).stripTrailingZeros().toPlainString();
  }
}
