package commonsheet.compare;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The capacity that the rates of a sheet are multiples of.
 *
 * @param capacity in A.h
 * @param statement id of the statement it comes from
 * @param doubt why it may be another one
 */
record RateBasis(double capacity, String statement, Optional<String> doubt) {
  /** Rated and nominal capacities are what rates are counted in (IEC 61960-3: the rated one). */
  private static final List<Statistic> USUAL = List.of(Statistic.RATED, Statistic.NOMINAL);

  private static final List<Statistic> OTHERS =
      Arrays.asList(Statistic.TYPICAL, Statistic.STANDARD, null, Statistic.MINIMUM);

  static Optional<RateBasis> of(CellRecord record) {
    return USUAL.stream()
        .flatMap(statistic -> of(record, statistic, false).stream())
        .findFirst()
        .or(() -> OTHERS.stream().flatMap(s -> of(record, s, true).stream()).findFirst());
  }

  private static Optional<RateBasis> of(CellRecord record, Statistic statistic, boolean other) {
    List<Statement> stated =
        StatedChoice.printed(record, "capacity").stream()
            .filter(s -> s.statistic() == statistic)
            .toList();
    if (stated.isEmpty()) {
      return Optional.empty();
    }
    // Capacities at higher rates are not what the rates are counted in.
    double lowest = stated.stream().mapToDouble(RateBasis::rate).min().orElseThrow();
    List<Statement> slow = stated.stream().filter(s -> rate(s) == lowest).toList();
    Statement first = StatedChoice.surest(slow);
    boolean several = slow.stream().anyMatch(s -> !s.value().equals(first.value()));
    boolean unsure = other || several || first.standing() == Standing.UNSURE;
    String doubt =
        "the current follows from the rate and the "
            + (statistic == null ? "" : statistic.label() + " ")
            + "capacity "
            + PlainNumber.of(first.value(), 4)
            + " A·h ("
            + first.id()
            + "), "
            + (several
                ? "one of several that the sheet states"
                : other ? "since the sheet states no rated or nominal one" : "which is unsure");
    return Optional.of(
        new RateBasis(first.value(), first.id(), unsure ? Optional.of(doubt) : Optional.empty()));
  }

  private static double rate(Statement statement) {
    Double rate = statement.conditions().get(Conditions.DISCHARGE_RATE);
    return rate == null ? 0 : rate;
  }
}
