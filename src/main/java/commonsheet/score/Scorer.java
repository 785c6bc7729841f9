package commonsheet.score;

import commonsheet.record.CellRecord;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Scores records against truths. Statements that a person has rejected are left out, and so is what
 * is derived from curves, which no sheet states.
 */
public final class Scorer {
  private Scorer() {}

  /** How one record agrees with one truth; a null record has read nothing. */
  public static SheetScore score(Truth truth, CellRecord record) {
    Stream<Statement> statements = record == null ? Stream.empty() : record.statements().stream();
    Map<String, List<TruthRow>> rows = group(truth.rows().stream(), TruthRow::quantity);
    Map<String, List<Statement>> read =
        group(statements.filter(Scorer::isOfSheet), Statement::quantity);
    Set<String> quantities = new LinkedHashSet<>(rows.keySet());
    quantities.addAll(read.keySet());
    List<Outcome> outcomes = new ArrayList<>();
    for (String quantity : quantities) {
      outcomes.addAll(
          QuantityMatch.outcomes(
              rows.getOrDefault(quantity, List.of()), read.getOrDefault(quantity, List.of())));
    }
    List<FieldOutcome> fields =
        truth.fields().stream()
            .map(field -> CellFields.compare(field, record == null ? null : record.cell()))
            .toList();
    return new SheetScore(truth.sheet(), outcomes, fields);
  }

  private static boolean isOfSheet(Statement statement) {
    return statement.standing() != Standing.REJECTED
        && (statement.evidence() == null || statement.evidence().method() != Method.DERIVED);
  }

  private static <T> Map<String, List<T>> group(Stream<T> all, Function<T, String> quantity) {
    return all.collect(Collectors.groupingBy(quantity, LinkedHashMap::new, Collectors.toList()));
  }

  /**
   * Scores all records of one sheet. Each truth is scored against the record of its model: that
   * whose {@code cell.model} is the truth's model (else the model the truth's own cell row gives),
   * compared by letters and digits only; where there is one truth and one record, they belong
   * together in any case. A record no truth is for is scored against nothing, so that all its
   * statements are spurious.
   */
  public static List<SheetScore> scoreSheet(List<Truth> truths, List<CellRecord> records) {
    List<CellRecord> left = new ArrayList<>(records);
    List<SheetScore> scores = new ArrayList<>();
    for (Truth truth : truths) {
      CellRecord record = recordFor(truth, truths.size(), left);
      left.remove(record);
      scores.add(score(truth, record));
    }
    if (!truths.isEmpty()) {
      left.forEach(record -> scores.add(score(Truth.none(record.id()), record)));
    }
    return scores;
  }

  private static CellRecord recordFor(Truth truth, int truths, List<CellRecord> records) {
    String model = truth.model() == null ? CellFields.model(truth) : truth.model();
    for (CellRecord record : records) {
      if (CellFields.sameModel(model, record.cell())) {
        return record;
      }
    }
    return truths == 1 && !records.isEmpty() ? records.get(0) : null;
  }
}
