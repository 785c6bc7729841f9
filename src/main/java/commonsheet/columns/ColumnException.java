package commonsheet.columns;

/**
 * A file that does not give what it is read for. The message is one sentence with the file, the
 * line where there is one, what is wrong and what to do.
 */
public final class ColumnException extends Exception {
  private static final long serialVersionUID = 1L;

  ColumnException(String message) {
    super(message);
  }
}
