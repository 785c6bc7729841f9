package commonsheet.score;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** How a statement and a truth row of the same quantity agree. */
record Agreement(TruthRow row, Statement statement, List<Difference> differences) {
  /** How far a number may be off and still be right, as a share of the expected number. */
  static final double RELATIVE = 0.005;

  /** How far a bound of a pure range may be off in any case; a bound of 0 leaves no share of it. */
  static final double BOUND = 0.01;

  /** Absorbs the rounding of binary fractions, nothing that could be printed on a sheet. */
  private static final double ROUNDING = 1e-9;

  /** Significant digits of numbers in messages: more than a sheet prints. */
  static final int DIGITS = 8;

  static Agreement of(TruthRow row, Statement statement) {
    List<Difference> differences = new ArrayList<>();
    if (row.statistic() != statement.statistic()) {
      differences.add(
          new Difference(
              "statistic",
              row.statistic() == null ? null : row.statistic().label(),
              statement.statistic() == null ? null : statement.statistic().label()));
    }
    if (!Objects.equals(row.unit(), statement.unit())) {
      differences.add(new Difference("unit", row.unit(), statement.unit()));
    }
    double slack = row.value() == null ? BOUND : 0;
    compare(differences, "value", row.value(), statement.value(), 0);
    compare(differences, "low", row.low(), statement.low(), slack);
    compare(differences, "high", row.high(), statement.high(), slack);
    for (Map.Entry<String, Double> condition : row.conditions().values().entrySet()) {
      String name = condition.getKey();
      Double read = statement.conditions().get(name);
      compare(differences, "conditions." + name, condition.getValue(), read, 0);
    }
    return new Agreement(row, statement, List.copyOf(differences));
  }

  boolean right() {
    return differences.isEmpty();
  }

  /** Whether number, unit and statistic agree, so that only conditions can differ. */
  boolean rightButForConditions() {
    return differences.stream().allMatch(Agreement::isCondition);
  }

  /** Conditions that the statement has beyond those of the truth. */
  int extraConditions() {
    return (int)
        statement.conditions().values().keySet().stream()
            .filter(name -> row.conditions().get(name) == null)
            .count();
  }

  /**
   * How unlike the two are; 0 means right without any extra condition. A differing number weighs
   * more than a differing statistic, and that more than one differing condition: a person looking
   * for what a wrong statement stands for goes by the number first. Common practice, no source.
   */
  double distance() {
    double distance = 0.01 * extraConditions();
    for (Difference difference : differences) {
      if (isCondition(difference)) {
        distance += 1;
      } else if (difference.in().equals("statistic")) {
        distance += 3;
      } else {
        distance += 6;
      }
    }
    if (row.value() != null && statement.value() != null) {
      distance += Math.min(1, Math.abs(row.value() - statement.value()) / scale(row.value()));
    }
    boolean samePage =
        statement.evidence() != null && Objects.equals(row.page(), statement.evidence().page());
    return samePage ? distance : distance + 0.1;
  }

  private static boolean isCondition(Difference difference) {
    return difference.in().startsWith("conditions.");
  }

  private static void compare(
      List<Difference> differences, String in, Double expected, Double read, double slack) {
    if (expected != null && (read == null || !near(expected, read, slack))) {
      differences.add(
          new Difference(
              in,
              PlainNumber.of(expected, DIGITS),
              read == null ? null : PlainNumber.of(read, DIGITS)));
    }
  }

  private static boolean near(double expected, double read, double slack) {
    double off = Math.abs(read - expected);
    return off <= Math.max(RELATIVE * Math.abs(expected), slack) + ROUNDING * scale(expected);
  }

  private static double scale(double expected) {
    return Math.max(Math.abs(expected), 1e-6);
  }
}
