package commonsheet.record;

/**
 * A record that cannot be read or written; the message is one sentence for a person: which record,
 * which place in it, what was expected, what to do.
 */
public class RecordException extends Exception {
  private static final long serialVersionUID = 1L;

  public RecordException(String message) {
    super(message);
  }

  public RecordException(String message, Throwable cause) {
    super(message, cause);
  }
}
