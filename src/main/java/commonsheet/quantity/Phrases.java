package commonsheet.quantity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Words, signs and unit spellings with their meanings, found at a place of a text; the longest
 * wins. A space in a phrase stands for any white space or none. The case printed is tried first,
 * then any case for phrases of two characters and more.
 */
final class Phrases<T> {
  /** A phrase found: its meaning and the place after it. */
  record Match<T>(T meaning, int end) {}

  /** Whether a phrase that ends at a place may end there. */
  interface Fit<T> {
    boolean at(T meaning, int end);
  }

  private record Phrase<T>(String spelling, T meaning) {}

  private final Map<Character, List<Phrase<T>>> byFirst = new HashMap<>();

  void add(String spelling, T meaning) {
    StringBuilder folded = new StringBuilder(spelling.length());
    spelling.chars().forEach(c -> folded.append(FoldedText.fold((char) c)));
    List<Phrase<T>> phrases =
        byFirst.computeIfAbsent(lower(folded.charAt(0)), first -> new ArrayList<>());
    phrases.add(new Phrase<>(folded.toString(), meaning));
    phrases.sort(Comparator.comparingInt(phrase -> -phrase.spelling.length()));
  }

  /** The longest phrase that begins at {@code place} and fits, or null. */
  Match<T> longest(FoldedText text, int place, Fit<T> fit) {
    Match<T> best = null;
    boolean bestIsExact = false;
    for (Phrase<T> phrase : byFirst.getOrDefault(lower(text.at(place)), List.of())) {
      for (boolean exact : new boolean[] {true, false}) {
        int end = endOf(phrase.spelling, text, place, exact);
        if (end < 0 || cutsWord(text, end) || !fit.at(phrase.meaning, end)) {
          continue;
        }
        if (best == null || end > best.end || (end == best.end && exact && !bestIsExact)) {
          best = new Match<>(phrase.meaning, end);
          bestIsExact = exact;
        }
        break;
      }
    }
    return best;
  }

  Match<T> longest(FoldedText text, int place) {
    return longest(text, place, (meaning, end) -> true);
  }

  private static int endOf(String spelling, FoldedText text, int place, boolean exact) {
    if (!exact && spelling.length() < 2) {
      return -1;
    }
    int at = place;
    for (int i = 0; i < spelling.length(); i++) {
      char wanted = spelling.charAt(i);
      if (wanted == ' ') {
        at = text.afterSpaces(at);
        continue;
      }
      char found = text.at(at);
      if (found != wanted && (exact || lower(found) != lower(wanted))) {
        return -1;
      }
      at++;
    }
    return at;
  }

  private static boolean cutsWord(FoldedText text, int end) {
    return FoldedText.isLetter(text.at(end - 1)) && FoldedText.isLetter(text.at(end));
  }

  private static char lower(char c) {
    return c < 0x80 ? (char) (c >= 'A' && c <= 'Z' ? c + 32 : c) : Character.toLowerCase(c);
  }
}
