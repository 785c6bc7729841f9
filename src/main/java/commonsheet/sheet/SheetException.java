package commonsheet.sheet;

/**
 * A file that cannot be read as a sheet; the message is one sentence for a person: what, where,
 * what to do.
 */
public final class SheetException extends Exception {
  private static final long serialVersionUID = 1L;

  /** Why a file cannot be read; each has an exit status of its own. */
  public enum Kind {
    NOT_FOUND,
    NOT_A_PDF,
    DAMAGED,
    ENCRYPTED,
    NO_PAGES,
    TOO_LARGE
  }

  private final Kind kind;

  public SheetException(Kind kind, String message) {
    super(message);
    this.kind = kind;
  }

  public Kind kind() {
    return kind;
  }
}
