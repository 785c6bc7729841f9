package commonsheet.layout;

/** A rule file that cannot be used; the message is one sentence with file and line. */
public final class LayoutException extends Exception {
  private static final long serialVersionUID = 1L;

  public LayoutException(String message) {
    super(message);
  }
}
