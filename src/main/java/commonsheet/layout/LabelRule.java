package commonsheet.layout;

import commonsheet.record.Conditions;
import commonsheet.record.Statistic;
import java.util.Collection;
import java.util.List;

/**
 * What a label names outright, without the way through the meaning of its words.
 *
 * @param say the label as printed, in each of its spellings
 * @param quantity a name of the quantity catalogue
 * @param statistic what the values are where neither figure nor column says it; may be null
 * @param unit the unit of figures that are printed without one; may be null
 * @param conditions what the label says or stands for
 */
record LabelRule(
    List<String> say, String quantity, Statistic statistic, String unit, Conditions conditions) {
  /** Sets the concept that stands for a quantity apart from every word of the vocabulary. */
  private static final String NAMES = "=";

  LabelRule {
    say = List.copyOf(say);
    conditions = conditions == null ? Conditions.NONE : conditions;
  }

  boolean reads(String key) {
    return say.stream().anyMatch(label -> Tokens.key(label).equals(key));
  }

  /** The label with what it means, for the vocabulary. */
  Vocabulary.Phrases asPhrases() {
    String concepts = NAMES + quantity + (statistic == null ? "" : " " + statistic.label());
    return new Vocabulary.Phrases(concepts, say);
  }

  /** The quantities that labels among these concepts name outright. */
  static List<Term> named(Collection<String> concepts) {
    return concepts.stream()
        .filter(concept -> concept.startsWith(NAMES))
        .map(concept -> concept.substring(NAMES.length()))
        .map(quantity -> new Term(quantity, List.of(), List.of(), List.of(), false))
        .toList();
  }
}
