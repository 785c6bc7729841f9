package commonsheet.chart.derived;

import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import java.util.Optional;

/** The printed capacity that a percent axis most likely is a percentage of. */
final class ReferenceCapacity {
  private ReferenceCapacity() {}

  /** The sheet's rated or nominal capacity, if it is another than the one compared. */
  static Optional<Statement> among(List<Statement> printed, Statement compared) {
    return List.of(Statistic.RATED, Statistic.NOMINAL).stream()
        .flatMap(
            statistic ->
                printed.stream()
                    .filter(s -> s.quantity().equals("capacity") && s.statistic() == statistic))
        .filter(s -> s.value() != null && compared.value() != null && s != compared)
        .findFirst();
  }
}
