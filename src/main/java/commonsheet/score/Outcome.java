package commonsheet.score;

import commonsheet.record.Statement;
import java.util.List;
import java.util.Locale;

/**
 * What became of one truth row, one statement, or the two paired.
 *
 * @param kind see {@link Kind}
 * @param expected the truth row; null for a spurious statement
 * @param read the statement; null for a missed row
 * @param differences in what a wrong statement differs from the row; otherwise empty
 */
public record Outcome(Kind kind, TruthRow expected, Statement read, List<Difference> differences) {
  /** How the truth and the record meet. */
  public enum Kind {
    /** The statement says what the row says. */
    RIGHT,
    /** The statement says something else than the closest row that no statement is right for. */
    WRONG,
    /** No statement is right for the row, and none is paired with it as wrong. */
    MISSED,
    /** The sheet does not say what the statement says. */
    SPURIOUS,
    /** Spurious as well: says once more what another statement says rightly; holds that row. */
    REPEATED;

    /** The name used in listings and JSON, such as {@code right}. */
    public String label() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Outcome {
    differences = List.copyOf(differences);
  }

  /** The quantity of the row or, where there is none, of the statement. */
  public String quantity() {
    return expected == null ? read.quantity() : expected.quantity();
  }
}
