package commonsheet.layout;

import commonsheet.record.Conditions;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A layout as a rule file describes it: how it is recognised, what its labels, columns and words
 * mean beyond the general vocabulary, and what holds on such sheets unless they say otherwise. The
 * members are described in {@code schemas/layout-rule.schema.json}.
 *
 * @param labels what whole labels name; they come before everything else
 * @param phrases what single words and phrases mean; they come before the general vocabulary
 * @param identity the words that introduce the cell's model, maker and the like
 * @param ignore labels and headings of sections that say nothing about the cell
 */
record LayoutRule(
    String name,
    int version,
    String description,
    Recognise recognise,
    List<LabelRule> labels,
    List<ColumnRule> columns,
    List<Vocabulary.Phrases> phrases,
    List<Vocabulary.Phrases> identity,
    List<String> ignore,
    Defaults defaults) {

  /** The layout nothing is known about: the general vocabulary alone. */
  static final LayoutRule GENERAL =
      new LayoutRule("general", 1, "any sheet", null, null, null, null, null, null, null);

  /**
   * What must stand on a sheet.
   *
   * @param allOf every one of these texts stands on the first two pages
   * @param anyOf if given, at least one of these does
   * @param columns if given, all of these stand as headings in one row of a table
   * @param rows if given, all of these stand as labels in one column of a table
   */
  record Recognise(
      List<String> allOf, List<String> anyOf, List<String> columns, List<String> rows) {
    Recognise {
      allOf = copy(allOf);
      anyOf = copy(anyOf);
      columns = copy(columns);
      rows = copy(rows);
    }
  }

  /**
   * What holds on such sheets.
   *
   * @param numbers {@code decimal-comma} or {@code decimal-point}, null to let the sheet decide
   * @param conditions quantity to the conditions it has on such sheets where it states none
   */
  record Defaults(
      String numbers,
      String maker,
      String chemistry,
      String form,
      Map<String, Conditions> conditions) {
    Defaults {
      conditions = conditions == null ? Map.of() : Map.copyOf(conditions);
    }
  }

  LayoutRule {
    recognise = recognise == null ? new Recognise(null, null, null, null) : recognise;
    labels = copy(labels);
    columns = copy(columns);
    phrases = copy(phrases);
    identity = copy(identity);
    ignore = copy(ignore);
    defaults = defaults == null ? new Defaults(null, null, null, null, null) : defaults;
  }

  /** What a label names; case, width of characters, spaces and punctuation make no difference. */
  Optional<LabelRule> label(String printed) {
    String key = Tokens.key(printed);
    return labels.stream().filter(label -> label.reads(key)).findFirst();
  }

  /** What is known of the column with this heading. */
  Optional<ColumnRule> column(String heading) {
    String key = Tokens.key(heading);
    return columns.stream().filter(column -> column.reads(key)).findFirst();
  }

  /** Whether a label or heading contains one of the texts to ignore. */
  boolean ignores(String printed) {
    String key = " " + Tokens.key(printed) + " ";
    return ignore.stream().anyMatch(text -> key.contains(" " + Tokens.key(text) + " "));
  }

  /** The conditions that a quantity has on such sheets where it states none; often none. */
  Conditions defaultConditions(String quantity) {
    return defaults.conditions().getOrDefault(quantity, Conditions.NONE);
  }

  /** The rule's columns for the vocabulary. */
  List<Vocabulary.Heading> headings() {
    return columns.stream().map(ColumnRule::asHeading).toList();
  }

  private static <T> List<T> copy(List<T> list) {
    return list == null ? List.of() : List.copyOf(list);
  }
}
