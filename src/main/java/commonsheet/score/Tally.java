package commonsheet.score;

import commonsheet.record.Standing;
import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Counts over truth rows and statements.
 *
 * @param truthRows rows of the truth
 * @param right rows with a right statement
 * @param spurious statements the sheet does not make, repetitions among them
 * @param repeated those of the spurious that repeat a right one
 * @param byStanding right statements and all statements, by standing
 */
public record Tally(
    int truthRows, int right, int spurious, int repeated, Map<Standing, Share> byStanding) {
  /** So many right of so many statements. */
  public record Share(int right, int statements) {
    private static final Share NONE = new Share(0, 0);

    private Share plus(Share other) {
      return new Share(right + other.right, statements + other.statements);
    }

    /** Right of all; empty where there is no statement. */
    public OptionalDouble ratio() {
      return Tally.ratio(right, statements);
    }
  }

  public Tally {
    byStanding = Map.copyOf(byStanding);
  }

  static Tally of(Collection<Outcome> outcomes) {
    int truthRows = 0;
    int right = 0;
    int spurious = 0;
    int repeated = 0;
    Map<Standing, Share> byStanding = new EnumMap<>(Standing.class);
    for (Outcome outcome : outcomes) {
      int isRight = outcome.kind() == Outcome.Kind.RIGHT ? 1 : 0;
      right += isRight;
      switch (outcome.kind()) {
        case RIGHT, WRONG, MISSED -> truthRows++;
        case SPURIOUS -> spurious++;
        case REPEATED -> {
          spurious++;
          repeated++;
        }
      }
      if (outcome.read() != null) {
        byStanding.merge(outcome.read().standing(), new Share(isRight, 1), Share::plus);
      }
    }
    return new Tally(truthRows, right, spurious, repeated, byStanding);
  }

  /** Right statements and all statements of a standing. */
  public Share of(Standing standing) {
    return byStanding.getOrDefault(standing, Share.NONE);
  }

  /** Right statements and all statements. */
  public Share all() {
    return byStanding.values().stream().reduce(Share.NONE, Share::plus);
  }

  /** Statements paired with a row they are not right for. */
  public int wrong() {
    return all().statements() - right - spurious;
  }

  /** Rows no statement is right for, those read wrongly among them. */
  public int missed() {
    return truthRows - right;
  }

  /** Right of all truth rows; empty where there is no truth row. */
  public OptionalDouble recall() {
    return ratio(right, truthRows);
  }

  /** Right of all statements, that is of right, wrong and spurious; empty where there is none. */
  public OptionalDouble precision() {
    return all().ratio();
  }

  private static OptionalDouble ratio(int part, int whole) {
    return whole == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) part / whole);
  }
}
