package commonsheet.layout;

import commonsheet.layout.Vocabulary.Heading;
import commonsheet.layout.Vocabulary.Phrases;
import java.util.List;
import java.util.Map;

/**
 * A layout as a rule file describes it: how it is recognised, what its words mean beyond the general vocabulary, and
 * what holds on such sheets unless they say otherwise.
 */
record LayoutRule(
    String name, int version, String description, Recognise recognise, Words vocabulary, List<String> ignore, Defaults defaults) {

  /** The layout nothing is known about: the general vocabulary alone. */
  static final LayoutRule GENERAL =
      new LayoutRule("general", 1, "any sheet", null, null, null, null);

  /** Every text of {@code allOf} and, if given, one of {@code anyOf} must stand on the sheet's first two pages. */
  record Recognise(List<String> allOf, List<String> anyOf) {
    Recognise {
      allOf = allOf == null ? List.of() : List.copyOf(allOf);
      anyOf = anyOf == null ? List.of() : List.copyOf(anyOf);
    }
  }

  /** What the layout's words mean; they come before the general vocabulary. */
  record Words(List<Phrases> phrases, List<Heading> columns, List<Phrases> identity) {
    Words {
      phrases = phrases == null ? List.of() : List.copyOf(phrases);
      columns = columns == null ? List.of() : List.copyOf(columns);
      identity = identity == null ? List.of() : List.copyOf(identity);
    }
  }

  /**
   * What holds on such sheets.
   *
   * @param numbers {@code decimal-comma} or {@code decimal-point}, null to let the sheet decide
   * @param conditions quantity to the conditions it has on such sheets where it states none
   */
  record Defaults(
      String numbers, String maker, String chemistry, String form, Map<String, Map<String, Double>> conditions) {}

  LayoutRule {
    recognise = recognise == null ? new Recognise(null, null) : recognise;
    vocabulary = vocabulary == null ? new Words(null, null, null) : vocabulary;
    ignore = ignore == null ? List.of() : List.copyOf(ignore);
    defaults = defaults == null ? new Defaults(null, null, null, null, null) : defaults;
  }
}
