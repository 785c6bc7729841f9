package commonsheet.compare.log;

/**
 * A file that is no load. The message is one sentence with the file, what is wrong and what to do.
 */
public final class LoadException extends Exception {
  private static final long serialVersionUID = 1L;

  LoadException(String message) {
    super(message);
  }
}
