package commonsheet.layout;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Misprinted words of the vocabulary: "Capcity", "Dicharge", "Intial" are one letter from the word
 * they mean, "maxima" and "Retencion" have lost an accent, which a recogniser of pictures may not
 * know.
 */
final class Spelling {
  /** Shorter words are too near to others. */
  private static final int SHORTEST = 6;

  /** Shorter words become others without their accents: "Höhe" is the height, "hohe" means high. */
  private static final int SHORTEST_ACCENTED = 5;

  private final Map<String, String> accented = new HashMap<>();
  private final Set<String> words = new HashSet<>();
  private final Map<String, String> known = new HashMap<>();

  void learn(String word) {
    String plain = withoutAccents(word);
    if (word.length() >= SHORTEST_ACCENTED && !plain.equals(word)) {
      accented.putIfAbsent(plain, word);
    }
    if (word.length() >= SHORTEST && !Tokens.isIdeograph(word.charAt(0))) {
      words.add(word);
      known.clear();
    }
  }

  private static String withoutAccents(String word) {
    return Normalizer.normalize(word, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
  }

  /**
   * The word that has lost its accents, or the one that a misprinted one is a letter away from;
   * null where it is none, or near several.
   */
  String meant(String printed) {
    String whole = accented.get(printed);
    if (whole != null) {
      return whole;
    }
    if (printed.length() < SHORTEST || words.contains(printed)) {
      return null;
    }
    return known.computeIfAbsent(printed, this::nearest).isEmpty() ? null : known.get(printed);
  }

  private String nearest(String printed) {
    String found = "";
    for (String word : words) {
      if (Math.abs(word.length() - printed.length()) <= 1 && oneLetterApart(word, printed)) {
        if (!found.isEmpty()) {
          return "";
        }
        found = word;
      }
    }
    return found;
  }

  /**
   * Whether a letter left out, put in, changed, or two neighbours swapped make one word of the
   * other.
   */
  private static boolean oneLetterApart(String a, String b) {
    int start = 0;
    int shortest = Math.min(a.length(), b.length());
    while (start < shortest && a.charAt(start) == b.charAt(start)) {
      start++;
    }
    String restA = a.substring(start);
    String restB = b.substring(start);
    if (restA.length() == restB.length()) {
      boolean changed = restA.length() > 0 && restA.substring(1).equals(restB.substring(1));
      boolean swapped =
          restA.length() > 1
              && restA.charAt(0) == restB.charAt(1)
              && restA.charAt(1) == restB.charAt(0)
              && restA.substring(2).equals(restB.substring(2));
      return changed || swapped;
    }
    return restA.length() > restB.length()
        ? restA.substring(1).equals(restB)
        : restB.substring(1).equals(restA);
  }
}
