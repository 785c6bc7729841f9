package commonsheet.sheet;

/**
 * A page that asks for more time or memory than {@link SheetSettings} allow; the message says of
 * what.
 */
final class PageLimitException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  PageLimitException(String message) {
    super(message);
  }
}
