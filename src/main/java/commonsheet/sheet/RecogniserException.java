package commonsheet.sheet;

/** Words of pictures cannot be read here; the message says why and what to do. */
public final class RecogniserException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * @param reason a clause that says why and what to do, without a full stop
   * @param cause null where there is none
   */
  public RecogniserException(String reason, Throwable cause) {
    super("Words in pictures cannot be read: " + reason + ".", cause);
  }
}
