package commonsheet.review;

import java.util.Locale;

/**
 * Who does something with a record, as they call themselves.
 *
 * @param name one line of up to 80 characters
 */
public record Person(String name) {
  private static final int LONGEST = 80;

  /**
   * Checks and tidies the name.
   *
   * @throws IllegalArgumentException for an empty or overlong one or one of several lines, in a
   *     sentence
   */
  public Person {
    name = name == null ? "" : name.strip().replaceAll(" +", " ");
    if (name.isEmpty()) {
      throw new IllegalArgumentException("say who you are by --by NAME");
    }
    if (name.length() > LONGEST || name.chars().anyMatch(Character::isISOControl)) {
      throw new IllegalArgumentException(
          "a name is one line of at most " + LONGEST + " characters");
    }
  }

  /**
   * Whether another name is the same person's: letter case and spaces do not tell persons apart.
   */
  public boolean is(String other) {
    return other != null && folded(name).equals(folded(other));
  }

  private static String folded(String name) {
    return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }
}
