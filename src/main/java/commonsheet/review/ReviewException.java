package commonsheet.review;

/** Something that cannot be done with a record, in one sentence: what, why, what to do. */
public final class ReviewException extends Exception {
  private static final long serialVersionUID = 1L;

  public ReviewException(String message) {
    super(message);
  }
}
