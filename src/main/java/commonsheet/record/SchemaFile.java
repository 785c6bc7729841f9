package commonsheet.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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
import java.util.function.Predicate;

/** One of the JSON Schemas of the files people exchange, compiled without a look at the network. */
public final class SchemaFile {
  /** The schemas' own annotation: the UCUM code of a number's unit. */
  private static final String UNIT_ANNOTATION = "x-unit";

  private final JsonNode text;
  private final Predicate<JsonNode> sound;
  private Schema compiled;

  private SchemaFile(JsonNode text) {
    this.text = text;
    this.sound = PlainlySound.by(text);
  }

  /**
   * Takes a schema of the program's.
   *
   * @param name such as {@code cell-record}
   * @throws IllegalArgumentException if the program has no schema of that name
   */
  public static SchemaFile named(String name) {
    String resource = "/commonsheet/schemas/" + name + ".schema.json";
    try (InputStream in = SchemaFile.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalArgumentException("the program has no schema " + resource);
      }
      return new SchemaFile(new ObjectMapper().readTree(in));
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
    return sound.test(file) ? List.of() : judged(file, whole);
  }

  /** Whether a file is sound at first sight, so that the validator need not be asked. */
  boolean isPlainlySound(JsonNode file) {
    return sound.test(file);
  }

  /** What the validator finds, slowly. */
  List<String> judged(JsonNode file, String whole) {
    return validator().validate(file).stream()
        .map(error -> SchemaSentence.of(error, whole))
        .distinct()
        .toList();
  }

  /** Made for the first file with something wrong, since that takes a fifth of a second. */
  private synchronized Schema validator() {
    if (compiled == null) {
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
      compiled = registry.getSchema(text);
    }
    return compiled;
  }
}
