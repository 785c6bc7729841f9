package commonsheet.score;

import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Standing;
import java.util.List;
import java.util.Locale;

/**
 * What became of one curve of the truth, one read curve, or the two paired.
 *
 * @param expected null for a spurious curve
 * @param read null for a missed curve
 * @param differences in what a wrong curve differs from the truth; otherwise empty
 * @param complete for a right curve, whether it has all conditions that the chart states, not only
 *     those that tell it from the chart's other curves
 */
public record CurveOutcome(
    Kind kind, CurveTruth expected, Curve read, List<Difference> differences, boolean complete) {
  /** How the truth and the record meet. */
  public enum Kind {
    /** Axes, conditions and points agree. */
    RIGHT,
    /** Paired with a curve of the truth, but something does not agree. */
    WRONG,
    /** No curve was read for it. */
    MISSED,
    /** The chart has no such curve. */
    SPURIOUS;

    /** The name used in listings and JSON, such as {@code right}. */
    public String label() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public CurveOutcome {
    differences = List.copyOf(differences);
  }

  static CurveOutcome missed(CurveTruth expected) {
    return new CurveOutcome(Kind.MISSED, expected, null, List.of(), false);
  }

  static CurveOutcome spurious(Curve read) {
    return new CurveOutcome(Kind.SPURIOUS, null, read, List.of(), false);
  }

  static CurveOutcome paired(CurveAgreement agreement) {
    Conditions stated = agreement.expected().conditions();
    Conditions read = agreement.read().conditions();
    boolean complete = stated.values().keySet().stream().allMatch(n -> read.get(n) != null);
    return new CurveOutcome(
        agreement.right() ? Kind.RIGHT : Kind.WRONG,
        agreement.expected(),
        agreement.read(),
        agreement.differences(),
        agreement.right() && complete);
  }

  /** Wrong or spurious without saying that it is unsure: what must never happen. */
  public boolean silent() {
    return (kind == Kind.WRONG || kind == Kind.SPURIOUS) && read.standing() != Standing.UNSURE;
  }

  /** Whether axes, quantities and units, are read as the truth has them. */
  public boolean axesRight() {
    return expected != null
        && read != null
        && differences.stream().noneMatch(d -> d.in().startsWith("x.") || d.in().startsWith("y."));
  }
}
