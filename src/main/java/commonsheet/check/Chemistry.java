package commonsheet.check;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.record.CellRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A chemistry and what its cells can have.
 *
 * @param words by which sheets name it, lower case, without spaces and signs
 * @param letter second letter of an IEC 61960-3 designation
 * @param nominal voltages, V; likewise {@code charge} and {@code cutoff}
 * @param specificEnergy the most, W.h/kg
 * @param energyDensity the most, W.h/L
 */
record Chemistry(
    String name,
    List<String> words,
    char letter,
    Interval nominal,
    Interval charge,
    Interval cutoff,
    double specificEnergy,
    double energyDensity) {
  private static final JsonNode FILE = CheckData.read("chemistries.yaml");
  static final String SOURCE = FILE.get("source").asText();
  static final List<Chemistry> ALL = all();

  /** Abbreviations have to stand by themselves; longer words may be parts of others. */
  private static final int ABBREVIATION = 3;

  Chemistry {
    words = List.copyOf(words);
  }

  private static List<Chemistry> all() {
    List<Chemistry> all = new ArrayList<>();
    for (JsonNode node : FILE.get("chemistries")) {
      List<String> words = new ArrayList<>();
      node.get("words").forEach(word -> words.add(word.asText()));
      all.add(
          new Chemistry(
              node.get("name").asText(),
              words,
              node.get("letter").asText().charAt(0),
              CheckData.interval(node.get("nominal")),
              CheckData.interval(node.get("charge")),
              CheckData.interval(node.get("cutoff")),
              node.get("specificEnergy").asDouble(),
              node.get("energyDensity").asDouble()));
    }
    return List.copyOf(all);
  }

  /** The one that the sheet names; nothing for a general word such as lithium-ion. */
  static Optional<Chemistry> of(CellRecord record) {
    String printed = record.cell().chemistry();
    return printed == null
        ? Optional.empty()
        : ALL.stream().filter(chemistry -> chemistry.isNamedIn(printed)).findFirst();
  }

  private boolean isNamedIn(String printed) {
    String lower = printed.toLowerCase(Locale.ROOT);
    String folded = lower.replaceAll("[^\\p{L}\\p{N}]", "");
    List<String> tokens = Arrays.asList(lower.split("[^\\p{L}\\p{N}]+"));
    return words.stream()
        .anyMatch(
            word ->
                word.length() <= ABBREVIATION && word.charAt(0) < 128
                    ? tokens.contains(word)
                    : folded.contains(word));
  }
}
