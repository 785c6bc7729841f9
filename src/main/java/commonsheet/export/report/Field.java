package commonsheet.export.report;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * A column of a table of the data package: its entry in the Table Schema, and its value in a row.
 *
 * @param <T> what a row is about
 * @param type of the Table Schema: string, number, integer or boolean
 * @param unit UCUM code of a number, or null
 * @param rdfType IRI of the term that means exactly this, or null
 * @param constraints of the Table Schema
 */
record Field<T>(
    String name,
    String type,
    String title,
    String description,
    String unit,
    String rdfType,
    Map<String, Object> constraints,
    Function<T, Object> value) {
  static <T> Field<T> text(
      String name, String title, String description, Function<T, String> value) {
    return new Field<>(name, "string", title, description, null, null, Map.of(), value::apply);
  }

  static <T> Field<T> number(
      String name, String unit, String title, String description, Function<T, Double> value) {
    return new Field<>(name, "number", title, description, unit, null, Map.of(), value::apply);
  }

  static <T> Field<T> integer(
      String name, String title, String description, Function<T, Integer> value) {
    return new Field<>(
        name, "integer", title, description, null, null, Map.of("minimum", 1), value::apply);
  }

  static <T> Field<T> yesNo(
      String name, String title, String description, Function<T, Boolean> value) {
    return new Field<>(
            name, "boolean", title, description, null, null, Map.<String, Object>of(), value::apply)
        .with("required", true);
  }

  /** The same with one more constraint. */
  Field<T> with(String constraint, Object bound) {
    Map<String, Object> more = new LinkedHashMap<>(constraints);
    more.put(constraint, bound);
    return new Field<>(name, type, title, description, unit, rdfType, more, value);
  }

  Field<T> required() {
    return with("required", true);
  }

  /** The same with the IRI of the term that means exactly this. */
  Field<T> meaning(String iri) {
    return new Field<>(name, type, title, description, unit, iri, constraints, value);
  }
}
