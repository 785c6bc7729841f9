package commonsheet.chart.text;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds known phrases in a text, the longest at each place. */
public final class PhraseFinder<T> {
  /** A phrase in a folded lower-case text. */
  public record Found<T>(T meaning, int start, int end) {}

  private final Map<String, T> phrases = new HashMap<>();
  private int longest;

  public void addAll(JsonNode list, T meaning) {
    for (JsonNode phrase : list) {
      String folded = ChartText.lower(phrase.asText());
      phrases.put(folded, meaning);
      longest = Math.max(longest, folded.length());
    }
  }

  /**
   * The phrases from left to right without overlap.
   *
   * @param text folded and in lower case
   */
  public List<Found<T>> find(String text) {
    List<Found<T>> found = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      Found<T> here = at(text, at);
      if (here == null) {
        at++;
      } else {
        found.add(here);
        at = here.end();
      }
    }
    return found;
  }

  /**
   * The meaning of the longest phrase of six letters or more that a text written without its spaces
   * holds but for one letter; null where there is none. For words recognised in pictures only.
   *
   * @param text folded and in lower case
   */
  public T nearly(String text) {
    String bare = text.replaceAll("[^\\p{L}]", "");
    String best = null;
    for (String phrase : phrases.keySet()) {
      String letters = phrase.replaceAll("[^\\p{L}]", "");
      boolean longer = best == null || phrase.length() > best.length();
      if (letters.length() >= 6 && longer && holdsNearly(bare, letters)) {
        best = phrase;
      }
    }
    return best == null ? null : phrases.get(best);
  }

  private static boolean holdsNearly(String text, String word) {
    if (text.contains(word.substring(1)) || text.contains(word.substring(0, word.length() - 1))) {
      return true;
    }
    for (int i = 0; i + word.length() <= text.length(); i++) {
      int unlike = 0;
      for (int k = 0; k < word.length() && unlike < 2; k++) {
        unlike += text.charAt(i + k) == word.charAt(k) ? 0 : 1;
      }
      if (unlike < 2) {
        return true;
      }
    }
    return false;
  }

  public boolean isIn(String text) {
    return !find(text).isEmpty();
  }

  private Found<T> at(String text, int start) {
    if (joins(text, start)) {
      return null;
    }
    for (int length = Math.min(longest, text.length() - start); length > 0; length--) {
      T meaning = phrases.get(text.substring(start, start + length));
      if (meaning != null && !joins(text, start + length)) {
        return new Found<>(meaning, start, start + length);
      }
    }
    return null;
  }

  /** Whether a word of an alphabet runs across a place. */
  private static boolean joins(String text, int place) {
    return place > 0
        && place < text.length()
        && ChartText.isAlphabetic(text.charAt(place - 1))
        && ChartText.isAlphabetic(text.charAt(place));
  }
}
