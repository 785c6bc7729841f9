package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two implementations of JSON Schema 2020-12 that share no code, networknt json-schema-validator
 * and ajv, have to agree on every record: then the schema says what we think it says.
 */
class IndependentValidatorTest {
  @TempDir Path folder;

  @BeforeEach
  void needsAjv() {
    Optional<String> why = IndependentValidator.whyUnavailable();
    assumeTrue(why.isEmpty(), () -> "not compared with ajv: " + why.orElseThrow());
  }

  @Test
  void agreesOnTheSampleAndOnEveryVariantOfIt() throws IOException {
    List<Variant> variants = Variant.all();
    assertTrue(variants.size() > 100, "variants.txt is not there whole");
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < variants.size(); i++) {
      files.add(
          Files.writeString(
              folder.resolve("variant" + i + ".json"), variants.get(i).apply(Samples.full())));
    }
    List<IndependentValidator.Verdict> verdicts = IndependentValidator.verdicts(files);
    List<Executable> comparisons = new ArrayList<>();
    for (int i = 0; i < variants.size(); i++) {
      Variant variant = variants.get(i);
      IndependentValidator.Verdict theirs = verdicts.get(i);
      List<String> ours = schemaProblems(Files.readString(files.get(i)));
      comparisons.add(
          () ->
              assertEquals(theirs.valid(), ours.isEmpty(), variant + ": " + theirs + " / " + ours));
      comparisons.add(() -> assertEquals(variant.valid(), theirs.valid(), variant + ": " + theirs));
    }
    assertAll(comparisons);
  }

  @Test
  void agreesOnTheSample() throws IOException {
    Path file = Files.writeString(folder.resolve("sample.json"), Samples.full());
    assertEquals(
        List.of(new IndependentValidator.Verdict(true, List.of())),
        IndependentValidator.verdicts(List.of(file)));
    assertEquals(List.of(), RecordValidator.problems(Samples.full()));
  }

  private static List<String> schemaProblems(String json) throws IOException {
    return RecordSchema.problems(RecordJson.tree(json));
  }
}
