package commonsheet.workbench.http;

import java.util.Map;

/**
 * A request that is not carried out. The sentence is shown to the person who made it: what is
 * wrong, where, and what to do.
 */
public final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final Kind kind;
  private final transient Map<String, Object> more;

  /** Why, in the terms of HTTP. */
  public enum Kind {
    /** Not one of ours. */
    FORBIDDEN(403),
    /** There is no such record, sheet, page or path. */
    MISSING(404),
    /** The file was changed by somebody else meanwhile. */
    CONFLICT(409),
    /** The request says something that cannot be done. */
    UNUSABLE(422),
    /** The files could not be read or written. */
    UNWRITTEN(500);

    private final int status;

    Kind(int status) {
      this.status = status;
    }

    int status() {
      return status;
    }
  }

  /** A refusal with nothing but its sentence. */
  public Refusal(Kind kind, String sentence) {
    this(kind, sentence, Map.of());
  }

  /**
   * A refusal that tells more.
   *
   * @param more members of the answer besides the sentence, such as the version that is there now
   */
  public Refusal(Kind kind, String sentence, Map<String, Object> more) {
    super(sentence, null, false, false);
    this.kind = kind;
    this.more = Map.copyOf(more);
  }

  int status() {
    return kind.status();
  }

  Map<String, Object> more() {
    return more;
  }
}
