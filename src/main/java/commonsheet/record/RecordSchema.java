package commonsheet.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.dialect.Dialect;
import com.networknt.schema.dialect.Dialects;
import com.networknt.schema.keyword.AnnotationKeyword;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** The compiled schema of records; compiled once, on first use, without a look at the network. */
final class RecordSchema {
  private static final String RESOURCE = "/commonsheet/schemas/cell-record.schema.json";

  /** The schema's own annotation: the UCUM code of a number's unit. */
  private static final String UNIT_ANNOTATION = "x-unit";

  private RecordSchema() {}

  /** Compiles the schema when it is first needed. */
  private static final class Holder {
    static final Schema SCHEMA = compile();
  }

  /** Compiles the schema now instead of on first use. */
  static void compileNow() {
    Objects.requireNonNull(Holder.SCHEMA);
  }

  static List<String> problems(JsonNode record) {
    return Holder.SCHEMA.validate(record).stream().map(SchemaSentence::of).distinct().toList();
  }

  private static Schema compile() {
    Dialect dialect =
        Dialect.builder(Dialects.getDraft202012())
            .keyword(new AnnotationKeyword(UNIT_ANNOTATION))
            .build();
    SchemaRegistry registry =
        SchemaRegistry.withDialect(
            dialect,
            builder ->
                builder.schemaRegistryConfig(
                    SchemaRegistryConfig.builder().locale(Locale.ENGLISH).build()));
    try (InputStream in = RecordSchema.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("the program file lacks its schema " + RESOURCE);
      }
      return registry.getSchema(in, InputFormat.JSON);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
