package commonsheet.export;

import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import commonsheet.record.Statement;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** The content of comparison.yaml, which explains its members. */
record ComparisonLayout(List<Column> columns, Map<String, Unit> units, List<Need> needed) {
  /** How a unit is written for people, and at the end of a CSV column name. */
  record Unit(String shown, String suffix) {}

  /** Something a builder needs to know. */
  record Need(String name, List<List<String>> anyOf, List<String> conditions) {
    boolean missingFrom(List<Statement> statements) {
      return conditions == null
          ? anyOf.stream().noneMatch(set -> set.stream().allMatch(q -> has(q, statements)))
          : anyOf.stream().flatMap(List::stream).anyMatch(q -> unconditioned(q, statements));
    }

    private static boolean has(String quantity, List<Statement> statements) {
      return statements.stream().anyMatch(s -> s.quantity().equals(quantity));
    }

    private boolean unconditioned(String quantity, List<Statement> statements) {
      List<Statement> ofQuantity =
          statements.stream().filter(s -> s.quantity().equals(quantity)).toList();
      return !ofQuantity.isEmpty()
          && ofQuantity.stream()
              .noneMatch(s -> conditions.stream().anyMatch(c -> s.conditions().get(c) != null));
    }
  }

  private static final ComparisonLayout STANDARD = load("comparison.yaml");

  static ComparisonLayout standard() {
    return STANDARD;
  }

  Unit unit(Column column) {
    return units.get(column.unit());
  }

  private static ComparisonLayout load(String resource) {
    String path = "/commonsheet/export/" + resource;
    try (InputStream in = ComparisonLayout.class.getResourceAsStream(path)) {
      return new YAMLMapper().readValue(in, ComparisonLayout.class);
    } catch (IOException e) {
      throw new UncheckedIOException("the resource " + path + " is damaged", e);
    }
  }
}
