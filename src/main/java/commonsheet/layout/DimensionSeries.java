package commonsheet.layout;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Several dimensions in one value, in the order their names or letters stand in the label: "T × W ×
 * L | 5 × 34 × 50 mm".
 */
final class DimensionSeries {
  private static final List<String> NAMES =
      List.of("diameter", "height", "width", "thickness", "length");
  private static final Pattern LETTERS =
      Pattern.compile(
          "(?<!\\p{L})([TWLHD\u03A6\u00D8])\\s?[x\u00D7*\u2715]\\s?([TWLHD])(?:\\s?[x\u00D7*\u2715]\\s?([TWLH]))?(?!\\p{L})");
  private static final Pattern DIAMETER = Pattern.compile("\\s*[\u03A6\u00D8\u03C6\u2300\u00F8]");
  private static final Map<String, String> BY_LETTER =
      Map.of(
          "T",
          "thickness",
          "W",
          "width",
          "L",
          "length",
          "H",
          "height",
          "D",
          "diameter",
          "\u03A6",
          "diameter",
          "\u00D8",
          "diameter");

  private final Vocabulary vocabulary;

  DimensionSeries(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /** A dimension's name and the figure that is its value. */
  record Named(String quantity, Figure figure) {}

  /** The dimensions of a value, by its label; empty where label and value do not go together. */
  List<Named> read(List<Passage> labels, Passage value, List<Figure> figures) {
    List<String> names = new ArrayList<>();
    labels.forEach(label -> names.addAll(names(label.text())));
    if (names.isEmpty() && isDiameterByHeight(labels, value)) {
      names.addAll(List.of("diameter", "height"));
    }
    List<Figure> lengths =
        figures.stream()
            .filter(
                f ->
                    f.value() != null
                        && (f.unit() == null || f.unit().dimension() == Dimension.LENGTH))
            .toList();
    boolean unit = lengths.stream().anyMatch(f -> f.unit() != null);
    if (names.size() < 2
        || names.size() != lengths.size()
        || names.stream().distinct().count() < names.size()
        || !unit) {
      return List.of();
    }
    List<Named> named = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      named.add(new Named(names.get(i), lengths.get(i)));
    }
    return named;
  }

  /**
   * "Size | \u03A6 26.2 \u00D7 65.5 mm": the sign for the diameter stands before the first figure.
   */
  private boolean isDiameterByHeight(List<Passage> labels, Passage value) {
    return DIAMETER.matcher(value.text()).lookingAt()
        && labels.stream().anyMatch(l -> vocabulary.conceptsOf(l.text()).contains("dimension"));
  }

  private List<String> names(String label) {
    Matcher letters = LETTERS.matcher(label);
    List<String> names = new ArrayList<>();
    if (letters.find()) {
      for (int i = 1; i <= letters.groupCount(); i++) {
        if (letters.group(i) != null) {
          names.add(BY_LETTER.get(letters.group(i)));
        }
      }
      return names;
    }
    for (Hit hit : vocabulary.hits(label)) {
      NAMES.stream().filter(hit::means).findFirst().ifPresent(names::add);
    }
    return names;
  }
}
