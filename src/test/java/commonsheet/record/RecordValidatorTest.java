package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RecordValidatorTest {
  static Stream<Variant> variants() throws IOException {
    return Variant.all().stream();
  }

  @ParameterizedTest
  @MethodSource("variants")
  void tellsValidFromInvalid(Variant variant) throws IOException {
    List<String> problems = RecordSchema.problems(RecordJson.tree(variant.apply(Samples.full())));
    assertEquals(variant.valid(), problems.isEmpty(), () -> "problems: " + problems);
  }

  @ParameterizedTest
  @MethodSource("variants")
  void namesAPlaceAtOrAboveTheChange(Variant variant) throws IOException {
    for (String problem : RecordSchema.problems(RecordJson.tree(variant.apply(Samples.full())))) {
      String place = problem.substring(0, problem.indexOf(": ")).replace("the record", "");
      String changed = variant.pointer().toString();
      assertTrue(
          changed.startsWith(place) || place.startsWith(changed.replaceAll("/[^/]*$", "")),
          () -> variant + " gives " + problem);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "/statements/0/evidence          |                | /statements/0: \"evidence\" is missing",
        "/statements/0/unit              | \"mA.h\"       | /statements/0/unit: must be \"A.h\","
            + " not \"mA.h\"",
        "/statements/0/unti              | \"A.h\"        | /statements/0: \"unti\" is no known"
            + " member; check its spelling or remove it",
        "/statements/1/low               |                | /statements/1: \"low\" is missing"
            + " beside \"high\"",
        "/cell/form                      | \"tube\"       | /cell/form: \"tube\" is none of"
            + " cylindrical, prismatic, pouch, coin",
        "/statements/0/value             | \"2.6\"        | /statements/0/value: must be of type"
            + " number, not string",
        "/statements/1/evidence/box/3    | -1             | /statements/1/evidence/box/3: must be"
            + " at least 0, not -1",
        "/comment                        | 1              | the record: \"comment\" is no known"
            + " member; check its spelling or remove it",
        "/statements/1/low               | 50             | /statements/1: \"low\" 50 is above"
            + " \"high\" 49; exchange them",
        "/statements/1/id                | \"s1\"         | /statements/1/id: \"s1\" is used"
            + " before; give each an id of its own",
        "/statements/0/evidence/page     | 10             | /statements/0/evidence/page: the sheet"
            + " has only 9 pages",
        "/statements/4/evidence/from     | [\"s9\"]       | /statements/4/evidence/from: the record"
            + " has no \"s9\"",
        "/statements/4/evidence/from     | [\"s5\"]       | /statements/4/evidence/from: a"
            + " statement cannot come from itself",
        "/findings/1/about               | [\"c2\"]       | /findings/1/about: the record has no"
            + " \"c2\"",
        "/statements/3/conditions/temperatureLow | 50     | /statements/3/conditions:"
            + " \"temperatureLow\" 50 is above \"temperatureHigh\" 45; exchange them",
        "/cell/model                     |                | /cell/evidence/model: evidence for a"
            + " member that the cell does not have",
        "/statements/0/value             | 1e999          | /statements/0/value: the number is too"
            + " large to be held",
      })
  void saysWhereAndWhat(String pointer, String value, String problem) throws IOException {
    String text = Samples.full();
    String broken =
        pointer.endsWith("box/3")
            ? text.replace("[72, 240, 60, 11.2]", "[72, 240, 60, " + value + "]")
            : value != null && value.equals("1e999")
                ? text.replaceFirst("2\\.6,", value + ",")
                : new Variant("", false, com.fasterxml.jackson.core.JsonPointer.compile(pointer), value)
                    .apply(text);
    assertEquals(List.of(problem), RecordValidator.problems(broken));
  }

  @Test
  void saysWhereTextIsNoJson() {
    List<String> problems = RecordValidator.problems("{\n  \"id\": 'a'\n}");
    assertEquals(1, problems.size());
    assertTrue(problems.get(0).startsWith("line 2, column "), problems.get(0));
  }

  @Test
  void acceptsNoEmptyText() {
    assertEquals(1, RecordValidator.problems("").size());
    assertEquals(List.of("the record: must be of type object, not array"),
        RecordValidator.problems("[]"));
  }
}
