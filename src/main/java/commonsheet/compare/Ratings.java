package commonsheet.compare;

import static commonsheet.compare.StatedFigures.number;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** The current that a sheet rates a cell for, at a temperature. */
final class Ratings {
  /** Statements that differ by less, as a share, say the same. */
  private static final double SAME = 0.005;

  private Ratings() {}

  static Figure of(CellRecord record, String quantity, Condition condition) {
    List<Statement> stated = StatedChoice.printed(record, quantity);
    if (stated.isEmpty()) {
      return Figure.absent("the sheet states no " + words(quantity));
    }
    List<Statement> holding = only(stated, s -> holds(s.conditions(), condition));
    boolean elsewhere = holding.isEmpty();
    List<Statement> fitting = elsewhere ? stated : holding;
    // A value that someone has settled, or that was read without doubt, outranks unsure ones.
    int best = fitting.stream().mapToInt(s -> trust(s.standing())).min().orElseThrow();
    List<Statement> trusted = only(fitting, s -> trust(s.standing()) == best);
    Statement lowest =
        trusted.stream().min(Comparator.comparingDouble(Statement::value)).orElseThrow();
    Figure figure = StatedFigures.figure(lowest);
    List<String> notes = new ArrayList<>(figure.notes());
    boolean differ = trusted.stream().anyMatch(s -> s.value() > lowest.value() * (1 + SAME));
    if (differ) {
      notes.add("the sheet states several; this is the lowest: " + listed(trusted));
    }
    if (elsewhere) {
      notes.add("stated for another temperature: " + listed(List.of(lowest)));
    }
    // Pulses of several lengths are no contradiction.
    boolean contradicts = differ && !quantity.equals("maximumPulseDischargeCurrent");
    return new Figure(
        figure.value(),
        figure.low(),
        figure.high(),
        Origin.STATED,
        figure.from(),
        notes,
        figure.unsure() || contradicts || elsewhere);
  }

  private static String words(String quantity) {
    return quantity.equals("maximumPulseDischargeCurrent")
        ? "maximum pulse discharge current"
        : "maximum continuous discharge current";
  }

  private static int trust(Standing standing) {
    return standing == Standing.UNSURE ? 1 : 0;
  }

  private static List<Statement> only(List<Statement> all, Predicate<Statement> which) {
    return all.stream().filter(which).toList();
  }

  private static boolean holds(Conditions conditions, Condition asked) {
    double tolerance = asked.tolerance().temperature();
    Double at = conditions.get(Conditions.TEMPERATURE);
    Double low = conditions.get(Conditions.TEMPERATURE_LOW);
    Double high = conditions.get(Conditions.TEMPERATURE_HIGH);
    if (at != null) {
      return Math.abs(at - asked.temperature()) <= tolerance;
    }
    return (low == null || asked.temperature() >= low)
        && (high == null || asked.temperature() <= high);
  }

  private static String listed(List<Statement> statements) {
    return String.join(
        ", ", statements.stream().map(s -> number(s.value()) + " A" + where(s)).toList());
  }

  private static String where(Statement statement) {
    Conditions conditions = statement.conditions();
    Double at = conditions.get(Conditions.TEMPERATURE);
    Double low = conditions.get(Conditions.TEMPERATURE_LOW);
    Double high = conditions.get(Conditions.TEMPERATURE_HIGH);
    Double duration = conditions.get(Conditions.DURATION);
    String text = duration == null ? "" : " for " + number(duration) + " s";
    if (at != null) {
      return text + " at " + number(at) + " °C";
    }
    return low == null && high == null
        ? text
        : text
            + " from "
            + (low == null ? "" : number(low))
            + " to "
            + (high == null ? "" : number(high))
            + " °C";
  }
}
