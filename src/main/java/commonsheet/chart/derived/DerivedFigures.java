package commonsheet.chart.derived;

import commonsheet.discharge.DischargeCurve;
import commonsheet.record.CellRecord;
import commonsheet.record.Evidence;
import commonsheet.record.Finding;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the curves of a record say as statements: capacity, energy and mid-capacity voltage of each
 * discharge down to its cut-off, relative capacities, and the Peukert exponent. A discharge that
 * does not reach its cut-off gives nothing; none is prolonged. Beside them stand findings on how
 * well curves agree with each other and with what the sheet prints.
 *
 * <p>Curves the user measured give no statements, since these would read as the maker's.
 */
public final class DerivedFigures {
  private static final Set<Standing> SETTLED =
      Set.of(Standing.CONFIRMED, Standing.CORRECTED, Standing.REJECTED);

  private DerivedFigures() {}

  /**
   * A record with what its curves give, in place of what earlier curves gave. Statements that a
   * person has settled stay and are not made again.
   */
  public static CellRecord applied(CellRecord record) {
    List<Statement> kept =
        record.statements().stream().filter(s -> !isFromCurves(s) || isSettled(s)).toList();
    List<Statement> statements = new ArrayList<>(kept);
    int number = kept.stream().map(Statement::id).mapToInt(DerivedFigures::number).max().orElse(0);
    for (Statement made : CurveStatements.of(DischargeCurve.of(record))) {
      if (kept.stream().noneMatch(settled -> isSame(settled, made))) {
        number++;
        statements.add(made.named("s" + number));
      }
    }
    List<Finding> findings =
        Stream.concat(
                record.findings().stream().filter(f -> !Agreement.RULES.contains(f.rule())),
                Agreement.findings(record, statements).stream()
                    .map(f -> f.acceptedAsIn(record.findings())))
            .toList();
    return new CellRecord(
        record.schema(),
        record.id(),
        record.cell(),
        record.source(),
        statements,
        record.curves(),
        findings,
        record.review());
  }

  /** Whether a statement is one of those that {@link #applied} makes. */
  static boolean isFromCurves(Statement statement) {
    Evidence evidence = statement.evidence();
    return evidence.method() == Method.DERIVED
        && evidence.from().stream().anyMatch(id -> id.startsWith("c"));
  }

  /** The curves that statements settled by a person come from. */
  static Set<String> reliedOn(CellRecord record) {
    return record.statements().stream()
        .filter(s -> isFromCurves(s) && isSettled(s))
        .flatMap(s -> s.evidence().from().stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  private static boolean isSettled(Statement statement) {
    return SETTLED.contains(statement.standing());
  }

  private static boolean isSame(Statement settled, Statement made) {
    return isFromCurves(settled)
        && settled.quantity().equals(made.quantity())
        && settled.evidence().from().equals(made.evidence().from());
  }

  private static int number(String id) {
    return Integer.parseInt(id.substring(1));
  }
}
