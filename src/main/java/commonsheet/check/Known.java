package commonsheet.check;

import commonsheet.record.Statement;
import java.util.List;

/**
 * What a record says of one thing of its cell, from all statements of it together.
 *
 * @param range from the lowest to the highest value stated
 * @param from ids of the statements
 */
record Known(Interval range, List<String> from) {
  static Known of(List<Statement> statements) {
    double low = statements.stream().mapToDouble(s -> Span.of(s).low()).min().orElseThrow();
    double high = statements.stream().mapToDouble(s -> Span.of(s).high()).max().orElseThrow();
    return new Known(new Interval(low, high), statements.stream().map(Statement::id).toList());
  }
}
