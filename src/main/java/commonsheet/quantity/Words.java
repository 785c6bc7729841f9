package commonsheet.quantity;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.Map;

/** The words and signs of words.yaml that stand with a number. */
final class Words {
  /** What a word says about its number; absent members are null, NONE and false. */
  record Meaning(Bound bound, Qualifier qualifier, boolean approximate, boolean between) {}

  private static final class Standard {
    private static final Words WORDS = new Words(Resource.read("words.yaml"));
  }

  final Phrases<Meaning> before = new Phrases<>();
  final Phrases<Meaning> after = new Phrases<>();
  final Phrases<Boolean> range;
  final Phrases<Boolean> and;
  final Phrases<Boolean> links;
  final Phrases<Boolean> followers;
  final Phrases<Boolean> ordinals;
  final Phrases<Boolean> each;
  final Phrases<Boolean> per;
  final Phrases<BigDecimal> numbers = new Phrases<>();

  private Words(JsonNode file) {
    addBounds(file.path("before"), before);
    addBounds(file.path("after"), after);
    for (Map.Entry<String, JsonNode> entry : file.path("qualifiers").properties()) {
      Meaning meaning = meaningOf(Qualifier.valueOf(entry.getKey()));
      addAll(entry.getValue(), before, meaning);
      addAll(entry.getValue(), after, meaning);
    }
    Meaning approximate = new Meaning(Bound.NONE, null, true, false);
    addAll(file.path("approximate"), before, approximate);
    addAll(file.path("approximate"), after, approximate);
    addAll(file.path("between"), before, new Meaning(Bound.NONE, null, false, true));
    range = plain(file.path("range"));
    and = plain(file.path("and"));
    links = plain(file.path("links"));
    followers = plain(file.path("followers"));
    ordinals = plain(file.path("ordinals"));
    each = plain(file.path("each"));
    per = plain(file.path("per"));
    for (Map.Entry<String, JsonNode> entry : file.path("numbers").properties()) {
      addAll(entry.getValue(), numbers, new BigDecimal(entry.getKey()));
    }
  }

  static Words standard() {
    return Standard.WORDS;
  }

  private static Meaning meaningOf(Qualifier qualifier) {
    Bound bound =
        switch (qualifier) {
          case MINIMUM -> Bound.AT_LEAST;
          case MAXIMUM -> Bound.AT_MOST;
          default -> Bound.NONE;
        };
    return new Meaning(bound, qualifier, false, false);
  }

  private static void addBounds(JsonNode byBound, Phrases<Meaning> phrases) {
    for (Map.Entry<String, JsonNode> entry : byBound.properties()) {
      Bound bound = Bound.valueOf(entry.getKey());
      addAll(entry.getValue(), phrases, new Meaning(bound, null, false, false));
    }
  }

  private static Phrases<Boolean> plain(JsonNode list) {
    Phrases<Boolean> phrases = new Phrases<>();
    addAll(list, phrases, true);
    return phrases;
  }

  private static <T> void addAll(JsonNode list, Phrases<T> phrases, T meaning) {
    for (String spelling : Resource.strings(list)) {
      phrases.add(spelling, meaning);
    }
  }
}
