package commonsheet.export.sizing;

import commonsheet.record.Source;
import java.util.List;
import java.util.function.Function;

/**
 * A named value of a row: a column of CSV and a member of a JSON object.
 *
 * @param name in snake case, with its unit at the end where it has one
 * @param value gives a text, a number, conditions, a list of these, or null where there is none
 */
record Field<T>(String name, Function<T, Object> value) {
  /** Which cell it is. */
  static <T> List<Field<T>> identity(Function<T, CellOrigin> origin) {
    return List.of(
        new Field<>("id", row -> origin.apply(row).id()),
        new Field<>("maker", row -> origin.apply(row).cell().maker()),
        new Field<>("model", row -> origin.apply(row).cell().model()),
        new Field<>("designation", row -> origin.apply(row).cell().designation()),
        new Field<>("chemistry", row -> origin.apply(row).cell().chemistry()),
        new Field<>("form", row -> origin.apply(row).cell().form()),
        new Field<>("size_code", row -> origin.apply(row).cell().sizeCode()));
  }

  /** Which sheet it comes from. */
  static <T> List<Field<T>> source(
      Function<T, CellOrigin> origin, Function<T, List<Integer>> pages) {
    return List.of(
        ofSource("source_file", origin, source -> source.file()),
        ofSource("source_sha256", origin, source -> source.sha256()),
        ofSource("source_document", origin, source -> source.document()),
        ofSource("source_revision", origin, source -> source.revision()),
        ofSource("source_date", origin, source -> source.date()),
        new Field<>("source_pages", pages::apply));
  }

  /** Who approved the record. */
  static <T> List<Field<T>> review(Function<T, CellOrigin> origin) {
    return List.of(
        new Field<>("state", row -> origin.apply(row).review().state()),
        new Field<>("approved_by", row -> origin.apply(row).review().approvedBy()),
        new Field<>("approved_at", row -> origin.apply(row).review().approvedAt()));
  }

  private static <T> Field<T> ofSource(
      String name, Function<T, CellOrigin> origin, Function<Source, Object> value) {
    return new Field<>(
        name,
        row -> {
          Source source = origin.apply(row).source();
          return source == null ? null : value.apply(source);
        });
  }
}
