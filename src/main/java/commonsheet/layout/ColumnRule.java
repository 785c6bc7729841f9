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

  /**
   * The column for the vocabulary. What is to be ignored is passed over like a running number; a
   * value column with conditions of its own stands beside others of its kind.
   */
  Vocabulary.Heading asHeading() {
    if (role.equals(IGNORE)) {
      return new Vocabulary.Heading(name(Role.NUMBER), say);
    }
    boolean stated = role.equals(name(Role.VALUE)) && !conditions.isEmpty();
    return new Vocabulary.Heading(stated ? name(Role.STATED) : role, say);
  }

  private static String name(Role role) {
    return role.name().toLowerCase(Locale.ROOT);
  }
}
