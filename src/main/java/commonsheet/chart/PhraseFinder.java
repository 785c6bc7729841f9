package commonsheet.chart;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds known phrases in a text, the longest at each place. */
final class PhraseFinder<T> {
  /** A phrase in a folded lower-case text. */
  record Found<T>(T meaning, int start, int end) {}

  private final Map<String, T> phrases = new HashMap<>();
  private int longest;

  void addAll(JsonNode list, T meaning) {
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
  List<Found<T>> find(String text) {
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

  boolean isIn(String text) {
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
