package commonsheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which languages a sheet is written in: by script, and by small words that only one language has.
 */
final class Languages {
  /** So many different small words of a language must appear. */
  private static final int ENOUGH = 4;

  private static final Map<String, Set<String>> SMALL_WORDS =
      Map.of(
          "fr",
          Set.of(
              "le",
              "les",
              "des",
              "du",
              "à",
              "et",
              "pour",
              "courant",
              "tension",
              "capacité",
              "décharge",
              "température",
              "masse",
              "énergie",
              "nominale",
              "après",
              "élément",
              "maximal"),
          "de",
          Set.of(
              "und",
              "der",
              "die",
              "das",
              "bei",
              "mit",
              "nach",
              "von",
              "für",
              "nicht",
              "zelle",
              "wert",
              "einheit",
              "mindestens",
              "höchstens",
              "spannung",
              "kapazität",
              "nennspannung",
              "masse",
              "durchmesser",
              "laden",
              "entladen",
              "ladestrom",
              "entladestrom",
              "lagerung",
              "temperatur"),
          "es",
          Set.of(
              "de",
              "la",
              "el",
              "los",
              "las",
              "con",
              "para",
              "una",
              "celda",
              "corriente",
              "tensión",
              "capacidad",
              "carga",
              "descarga",
              "valor",
              "masa",
              "peso",
              "almacenamiento",
              "mínima",
              "máxima",
              "nominal"));

  private Languages() {}

  /** Language codes, English first; English is read on every sheet. */
  static List<String> of(String text) {
    List<String> languages = new ArrayList<>(List.of("en"));
    Set<String> words = Vocabulary.wordsOf(text);
    for (String code : List.of("de", "es", "fr")) {
      if (SMALL_WORDS.get(code).stream().filter(words::contains).count() >= ENOUGH) {
        languages.add(code);
      }
    }
    if (text.codePoints().anyMatch(c -> c >= 0x3041 && c <= 0x30FF)) {
      languages.add("ja");
    }
    if (text.codePoints()
        .anyMatch(c -> Character.UnicodeScript.of(c) == Character.UnicodeScript.HANGUL)) {
      languages.add("ko");
    }
    if (text.codePoints().anyMatch(Character::isIdeographic)) {
      languages.add("zh");
    }
    return languages;
  }
}
