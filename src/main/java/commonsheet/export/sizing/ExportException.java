package commonsheet.export.sizing;

/**
 * An export that cannot be written or read; the message is one sentence for a person: what, where,
 * what to do.
 */
public final class ExportException extends Exception {
  private static final long serialVersionUID = 1L;

  public ExportException(String message) {
    super(message);
  }

  public ExportException(String message, Throwable cause) {
    super(message, cause);
  }
}
