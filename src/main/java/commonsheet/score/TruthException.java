package commonsheet.score;

import java.nio.file.Path;

/** A truth file that cannot be used; the message is one sentence: file, line, what to do. */
public final class TruthException extends Exception {
  private static final long serialVersionUID = 1L;

  /** For a fault of the whole file. */
  TruthException(Path file, String problem) {
    super(file + ": " + problem);
  }

  /** For a fault of one row; {@code line} counts from 1. */
  TruthException(Path file, long line, String problem) {
    super(file + ", line " + line + ": " + problem);
  }
}
