package commonsheet.sheet.ocr;

/** Words of pictures cannot be read here; the message says why and what to do. */
public final class EngineException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  EngineException(String reason, Throwable cause) {
    super("Words in pictures cannot be read: " + reason + ".", cause);
  }
}
