package commonsheet.discharge;

import commonsheet.record.CellRecord;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The printed capacity that a rate is a multiple of, and a percent axis a percentage. */
public final class ReferenceCapacity {
  private ReferenceCapacity() {}

  /** The sheet's rated capacity, or else its nominal one, if it states one such only. */
  public static Optional<Double> of(List<CellRecord> records) {
    for (Statistic statistic : List.of(Statistic.RATED, Statistic.NOMINAL)) {
      List<Double> stated =
          records.stream()
              .flatMap(record -> record.statements().stream())
              .filter(s -> s.quantity().equals("capacity") && s.statistic() == statistic)
              .filter(s -> s.standing() != Standing.REJECTED && s.standing() != Standing.UNSURE)
              .map(Statement::value)
              .filter(Objects::nonNull)
              .distinct()
              .toList();
      if (!stated.isEmpty()) {
        return stated.size() == 1 ? Optional.of(stated.get(0)) : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** The sheet's rated or nominal capacity, if it is another than the one compared. */
  public static Optional<Statement> among(List<Statement> printed, Statement compared) {
    return List.of(Statistic.RATED, Statistic.NOMINAL).stream()
        .flatMap(
            statistic ->
                printed.stream()
                    .filter(s -> s.quantity().equals("capacity") && s.statistic() == statistic))
        .filter(s -> s.value() != null && compared.value() != null && s != compared)
        .findFirst();
  }
}
