package commonsheet.export;

/** Texts of unknown origin, made fit for GitHub Flavored Markdown. */
public final class MarkdownText {
  private MarkdownText() {}

  /** The text with every character taken its meaning for Markdown and for HTML. */
  public static String of(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replaceAll("[\\\\`*_{}\\[\\]#|~!$]", "\\\\$0");
  }
}
