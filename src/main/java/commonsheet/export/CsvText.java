package commonsheet.export;

/** Texts of unknown origin, made fit for a spreadsheet. */
public final class CsvText {
  private CsvText() {}

  /**
   * The text on one line, without control characters and characters that turn the direction of
   * writing; null as empty. A text that begins like a formula ({@code = + - @}) gets an apostrophe
   * before it, so that a spreadsheet takes it for text. Full-width signs count as well: some
   * spreadsheets read them as the plain ones.
   */
  public static String of(String text) {
    String clean = Printed.clean(text);
    return !clean.isEmpty() && "=+-@＝＋－＠".indexOf(clean.charAt(0)) >= 0 ? '\'' + clean : clean;
  }
}
