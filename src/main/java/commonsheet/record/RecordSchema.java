package commonsheet.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Objects;

/** The compiled schema of records; compiled once, on first use. */
final class RecordSchema {
  private RecordSchema() {}

  /** Compiles the schema when it is first needed. */
  private static final class Holder {
    static final SchemaFile SCHEMA = SchemaFile.named("cell-record");
  }

  /** Compiles the schema now instead of on first use. */
  static void compileNow() {
    Objects.requireNonNull(Holder.SCHEMA);
  }

  static List<String> problems(JsonNode record) {
    return Holder.SCHEMA.problems(record, "the record");
  }
}
