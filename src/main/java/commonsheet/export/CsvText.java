package commonsheet.export;

/** Texts of unknown origin, made fit for a spreadsheet. */
public final class CsvText {
  private static final String FORMULA_SIGNS = "=+-@＝＋－＠";

  private CsvText() {}

  /**
   * The text on one line, without control characters and characters that turn the direction of
   * writing; null as empty. A text that begins like a formula ({@code = + - @}) gets an apostrophe
   * before it, so that a spreadsheet takes it for text. Full-width signs count as well: some
   * spreadsheets read them as the plain ones.
   */
  public static String of(String text) {
    String clean = Printed.clean(text);
    return beginsLikeFormula(clean, 0) ? '\'' + clean : clean;
  }

  /** The text without the apostrophe that {@link #of} put before it; null stays null. */
  public static String original(String text) {
    return text != null && text.startsWith("'") && beginsLikeFormula(text, 1)
        ? text.substring(1)
        : text;
  }

  private static boolean beginsLikeFormula(String text, int start) {
    return text.length() > start && FORMULA_SIGNS.indexOf(text.charAt(start)) >= 0;
  }
}
