package commonsheet.check;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A current far from what a cell of the capacity takes or gives: mA for A, or a lost point. */
final class CurrentForCapacity extends NamedRule {
  private static final JsonNode FILE = CheckData.read("currents.yaml");

  CurrentForCapacity() {
    super("slip/current-for-capacity", Severity.ERROR, FILE.get("source").asText());
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    Optional<Known> capacity = new CellFacts(record).capacity();
    return capacity.stream()
        .flatMap(
            known ->
                Readings.of(record)
                    .filter(s -> s.value() != null && FILE.get("currents").has(s.quantity()))
                    .filter(s -> !rates(s).times(known.range()).holds(s.value()))
                    .map(s -> finding(s, known.range())));
  }

  private static Interval rates(Statement statement) {
    return CheckData.interval(FILE.get("currents").get(statement.quantity()));
  }

  private Finding finding(Statement statement, Interval capacity) {
    double middle = (capacity.low() + capacity.high()) / 2;
    return finding(
        List.of(statement.id()),
        "A "
            + Wording.name(statement)
            + " of "
            + Wording.valueAndPage(statement)
            + " is "
            + commonsheet.quantity.PlainNumber.of(statement.value() / middle, 2)
            + " C of the sheet's capacity, where cells have "
            + rates(statement).text(3)
            + " C; look whether mA were taken for A, or a decimal sign was lost.");
  }
}
