package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class RecordValidatorTest {
  static Stream<Variant> variants() throws IOException {
    return Variant.all().stream();
  }

  /** The blocks of {@code problems.txt}: a change and the problems it gives. */
  static Stream<Arguments> problems() throws IOException {
    return Arrays.stream(Samples.text("/record/problems.txt").split("\n\n"))
        .filter(block -> !block.startsWith("#"))
        .map(
            block ->
                Arguments.of(
                    Variant.of(block.lines().findFirst().orElseThrow()),
                    block.lines().skip(1).map(String::strip).toList()));
  }

  @ParameterizedTest
  @MethodSource("variants")
  void tellsValidFromInvalid(Variant variant) throws IOException {
    List<String> problems = RecordSchema.problems(RecordJson.tree(variant.apply(Samples.full())));
    assertEquals(variant.valid(), problems.isEmpty(), () -> "problems: " + problems);
  }

  @ParameterizedTest
  @MethodSource("problems")
  void saysWhereAndWhat(Variant variant, List<String> problems) throws IOException {
    assertEquals(problems, RecordValidator.problems(variant.apply(Samples.full())));
  }

  @Test
  void refusesNumbersTooLargeToBeHeld() throws IOException {
    String text = Samples.full().replaceFirst("\"value\": 2\\.6", "\"value\": 1e999");
    assertEquals(
        List.of("/statements/0/value: the number is too large to be held"),
        RecordValidator.problems(text));
  }

  @Test
  void saysWhereTextIsNoJson() {
    List<String> problems = RecordValidator.problems("{\n  \"id\": 'a'\n}");
    assertEquals(1, problems.size());
    assertTrue(problems.get(0).startsWith("line 2, column "), problems.get(0));
    assertTrue(problems.get(0).endsWith("repair the file or read the sheet again"));
  }

  @Test
  void refusesMembersGivenTwice() throws IOException {
    String twice = Samples.full().replaceFirst("\"value\": 2\\.6", "\"value\": 2.6, \"value\": 2");
    assertEquals(1, RecordValidator.problems(twice).size());
  }

  @Test
  void refusesTextThatIsNoObject() {
    assertEquals(
        List.of("the record: must be of type object, not array"), RecordValidator.problems("[]"));
    assertEquals(1, RecordValidator.problems("").size());
    assertEquals(1, RecordValidator.problems("{} {}").size());
  }
}
