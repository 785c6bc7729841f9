package commonsheet.export.report;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.export.CsvText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A table of the data package, with its Table Schema.
 *
 * @param <T> what a row is about
 * @param primaryKey names of the fields that tell one row from the others
 * @param foreignKeys field to the table whose primary key of one field it takes its values from
 */
record PackageTable<T>(
    String name,
    String title,
    String description,
    List<Field<T>> fields,
    List<String> primaryKey,
    Map<String, String> foreignKeys,
    List<T> rows) {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  String path() {
    return name + ".csv";
  }

  /** The rows as CSV (RFC 4180). */
  String csv() {
    StringBuilder out = new StringBuilder();
    try {
      CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
      printer.printRecord(fields.stream().map(Field::name));
      for (T row : rows) {
        printer.printRecord(fields.stream().map(field -> text(field.value().apply(row))));
      }
      printer.flush();
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory does not fail", e);
    }
    return out.toString();
  }

  private static Object text(Object value) {
    if (value instanceof Double number) {
      return Numbers.text(number);
    }
    return value instanceof String words ? CsvText.of(words) : value;
  }

  /** The Tabular Data Resource that describes it. */
  ObjectNode resource() {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("profile", "tabular-data-resource");
    node.put("name", name).put("path", path());
    node.put("title", title).put("description", description);
    node.put("format", "csv").put("mediatype", "text/csv").put("encoding", "utf-8");
    ObjectNode dialect = node.putObject("dialect");
    dialect.put("delimiter", ",").put("quoteChar", "\"").put("doubleQuote", true);
    dialect.put("lineTerminator", "\r\n").put("header", true);
    node.set("schema", schema());
    return node;
  }

  private ObjectNode schema() {
    ObjectNode schema = JsonNodeFactory.instance.objectNode();
    ArrayNode list = schema.putArray("fields");
    fields.forEach(field -> describe(field, list.addObject()));
    schema.putArray("missingValues").add("");
    ArrayNode key = schema.putArray("primaryKey");
    primaryKey.forEach(key::add);
    if (!foreignKeys.isEmpty()) {
      ArrayNode keys = schema.putArray("foreignKeys");
      foreignKeys.forEach(
          (field, table) -> {
            ObjectNode foreign = keys.addObject();
            foreign.put("fields", field);
            foreign.putObject("reference").put("resource", table).put("fields", field);
          });
    }
    return schema;
  }

  private static void describe(Field<?> field, ObjectNode node) {
    node.put("name", field.name()).put("type", field.type());
    node.put("title", field.title()).put("description", field.description());
    if (field.unit() != null) {
      node.put("unit", field.unit());
    }
    if (field.rdfType() != null) {
      node.put("rdfType", field.rdfType());
    }
    if (!field.constraints().isEmpty()) {
      ObjectNode constraints = node.putObject("constraints");
      field
          .constraints()
          .forEach((name, bound) -> constraints.set(name, MAPPER.valueToTree(bound)));
    }
  }
}
