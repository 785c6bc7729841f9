package commonsheet.layout;

import commonsheet.record.Conditions;
import java.util.List;
import java.util.Locale;

/**
 * What a column of a table holds.
 *
 * @param role name of a {@link Role}, or {@code ignore}
 * @param say the heading as printed, in each of its spellings
 * @param conditions under which every value of the column holds
 */
record ColumnRule(String role, List<String> say, Conditions conditions) {
  /** The role, in rule files, of a column that says nothing about the cell. */
  private static final String IGNORE = "ignore";

  ColumnRule {
    say = List.copyOf(say);
    conditions = conditions == null ? Conditions.NONE : conditions;
  }

  boolean reads(String key) {
    return say.stream().anyMatch(heading -> Tokens.key(heading).equals(key));
  }

  /** The column for the vocabulary: what is to be ignored is passed over like a running number. */
  Vocabulary.Heading asHeading() {
    String known = role.equals(IGNORE) ? Role.NUMBER.name().toLowerCase(Locale.ROOT) : role;
    return new Vocabulary.Heading(known, say);
  }
}
