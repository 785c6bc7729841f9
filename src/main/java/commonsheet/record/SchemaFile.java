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

/** One of the JSON Schemas of the files people exchange, compiled without a look at the network. */
public final class SchemaFile {
  /** The schemas' own annotation: the UCUM code of a number's unit. */
  private static final String UNIT_ANNOTATION = "x-unit";

  private final Schema schema;

  private SchemaFile(Schema schema) {
    this.schema = schema;
  }

  /**
   * Compiles a schema.
   *
   * @param name such as {@code cell-record}
   * @throws IllegalArgumentException if the program has no schema of that name
   */
  public static SchemaFile named(String name) {
    String resource = "/commonsheet/schemas/" + name + ".schema.json";
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
    try (InputStream in = SchemaFile.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalArgumentException("the program has no schema " + resource);
      }
      return new SchemaFile(registry.getSchema(in, InputFormat.JSON));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * What is wrong with a file, one sentence for each place, which it begins with; empty for a valid
   * one.
   *
   * @param whole what to call the whole of the file in a sentence, such as {@code the record}
   */
  public List<String> problems(JsonNode file, String whole) {
    return schema.validate(file).stream()
        .map(error -> SchemaSentence.of(error, whole))
        .distinct()
        .toList();
  }
}
