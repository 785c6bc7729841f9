package commonsheet.score;

import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * Pairs the truth rows and the statements of one quantity, one to one. First as many as possible
 * are paired rightly; then what is left is paired with its closest, as wrong.
 */
final class QuantityMatch {
  /** Outweighs all that {@link #preference} and {@link Agreement#distance} can add up to. */
  private static final double ONE_PAIR = 1e6;

  private final List<TruthRow> rows;
  private final List<Statement> statements;
  private final Agreement[][] agreements;
  private final Outcome[] ofRow;
  private final Outcome[] ofStatement;

  private QuantityMatch(List<TruthRow> rows, List<Statement> statements) {
    this.rows = rows;
    this.statements = statements;
    agreements =
        rows.stream()
            .map(
                row -> statements.stream().map(s -> Agreement.of(row, s)).toArray(Agreement[]::new))
            .toArray(Agreement[][]::new);
    ofRow = new Outcome[rows.size()];
    ofStatement = new Outcome[statements.size()];
  }

  /** The outcomes of the rows in their order, then of the statements left over in theirs. */
  static List<Outcome> outcomes(List<TruthRow> rows, List<Statement> statements) {
    QuantityMatch match = new QuantityMatch(rows, statements);
    match.pairRight();
    match.pairWrong();
    return match.collect();
  }

  private void pairRight() {
    double[][] cost = new double[rows.size()][statements.size()];
    for (int r = 0; r < rows.size(); r++) {
      for (int s = 0; s < statements.size(); s++) {
        Agreement agreement = agreements[r][s];
        cost[r][s] = agreement.right() ? preference(agreement) - ONE_PAIR : 0;
      }
    }
    int[] paired = Assignment.solve(cost);
    for (int r = 0; r < paired.length; r++) {
      if (paired[r] >= 0 && agreements[r][paired[r]].right()) {
        pair(r, paired[r], Outcome.Kind.RIGHT);
      }
    }
  }

  /** Among statements that are all right, those that say least beside it, then the trusted ones. */
  private static double preference(Agreement agreement) {
    boolean unsure = agreement.statement().standing() == Standing.UNSURE;
    return agreement.distance() + (unsure ? 0.001 : 0);
  }

  private void pairWrong() {
    int[] openRows = IntStream.range(0, rows.size()).filter(r -> ofRow[r] == null).toArray();
    int[] openStatements =
        IntStream.range(0, statements.size())
            .filter(s -> ofStatement[s] == null && !repeats(s, openRows))
            .toArray();
    double[][] cost = new double[openRows.length][openStatements.length];
    for (int r = 0; r < openRows.length; r++) {
      for (int s = 0; s < openStatements.length; s++) {
        cost[r][s] = agreements[openRows[r]][openStatements[s]].distance();
      }
    }
    int[] paired = Assignment.solve(cost);
    for (int r = 0; r < paired.length; r++) {
      if (paired[r] >= 0) {
        pair(openRows[r], openStatements[paired[r]], Outcome.Kind.WRONG);
      }
    }
  }

  /** Whether a statement says again what is matched, rather than an open row without conditions. */
  private boolean repeats(int statement, int[] openRows) {
    return repeatedRow(statement) != null
        && IntStream.of(openRows)
            .noneMatch(row -> agreements[row][statement].rightButForConditions());
  }

  /** The matched row that a statement would be right for, or null. */
  private TruthRow repeatedRow(int statement) {
    return IntStream.range(0, rows.size())
        .filter(row -> ofRow[row] != null && agreements[row][statement].right())
        .mapToObj(rows::get)
        .findFirst()
        .orElse(null);
  }

  private void pair(int row, int statement, Outcome.Kind kind) {
    Agreement agreement = agreements[row][statement];
    Outcome outcome =
        new Outcome(kind, rows.get(row), statements.get(statement), agreement.differences());
    ofRow[row] = outcome;
    ofStatement[statement] = outcome;
  }

  private List<Outcome> collect() {
    List<Outcome> outcomes = new ArrayList<>();
    for (int r = 0; r < rows.size(); r++) {
      outcomes.add(
          Objects.requireNonNullElse(
              ofRow[r], new Outcome(Outcome.Kind.MISSED, rows.get(r), null, List.of())));
    }
    for (int s = 0; s < statements.size(); s++) {
      if (ofStatement[s] == null) {
        TruthRow repeated = repeatedRow(s);
        Outcome.Kind kind = repeated == null ? Outcome.Kind.SPURIOUS : Outcome.Kind.REPEATED;
        outcomes.add(new Outcome(kind, repeated, statements.get(s), List.of()));
      }
    }
    return outcomes;
  }
}
