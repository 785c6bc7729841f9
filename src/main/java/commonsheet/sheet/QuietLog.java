package commonsheet.sheet;

/** Keeps the PDF library from writing its warnings to standard error. */
final class QuietLog {
  private static final String CHOICE = "org.apache.commons.logging.Log";

  private QuietLog() {}

  /** Must run before the library's first class is loaded; a choice made outside stands. */
  static void choose() {
    if (System.getProperty(CHOICE) == null) {
      System.setProperty(CHOICE, "org.apache.commons.logging.impl.NoOpLog");
    }
  }
}
