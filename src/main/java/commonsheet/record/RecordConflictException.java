package commonsheet.record;

/** A record file that somebody else changed after it was read; nothing was written over. */
public final class RecordConflictException extends RecordException {
  private static final long serialVersionUID = 1L;

  public RecordConflictException(String message) {
    super(message);
  }
}
