package commonsheet.export;

import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.List;
import java.util.stream.Collectors;

/** The size of a cell by its dimensions, as the trade writes it. */
final class Dimensions {
  private static final List<List<String>> FORMS =
      List.of(List.of("diameter", "height"), List.of("thickness", "width", "length"));

  private Dimensions() {}

  /**
   * Such as {@code 18.5 × 65.3 mm} or {@code 6 × 34 × 49 mm} (thickness, width, length); several
   * values of one dimension are separated by a slash; empty where a dimension is not stated.
   */
  static String text(List<Statement> statements) {
    return FORMS.stream()
        .filter(form -> form.stream().noneMatch(d -> values(d, statements).isEmpty()))
        .findFirst()
        .map(
            form ->
                form.stream()
                    .map(dimension -> values(dimension, statements))
                    .collect(Collectors.joining(" × ", "", " mm")))
        .orElse("");
  }

  private static String values(String dimension, List<Statement> statements) {
    return statements.stream()
        .filter(statement -> statement.quantity().equals(dimension))
        .map(Dimensions::value)
        .distinct()
        .collect(Collectors.joining("/"));
  }

  private static String value(Statement statement) {
    String number =
        statement.value() == null
            ? StatementText.range(statement.low(), statement.high())
            : Printed.shown(statement.value());
    return statement.standing() == Standing.UNSURE ? number + StatementText.UNSURE : number;
  }
}
