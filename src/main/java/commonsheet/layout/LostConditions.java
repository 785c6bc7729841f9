package commonsheet.layout;

import commonsheet.quantity.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether words recognised from a picture leave room for a condition that was not understood: a
 * value without one of its conditions says too much.
 */
final class LostConditions {
  /** A number that stands alone: "1C" was taken for 10. */
  private static final Pattern BARE_NUMBER = Pattern.compile("(?m)^\\s*\\d+(?:[.,]\\d+)?\\s*$");

  /** "10 to 2.0 V" was "1C to 2.0 V". */
  private static final Pattern FROM_TO =
      Pattern.compile("(?<![\\d.,-])(\\d+(?:[.]\\d+)?) to (\\d+(?:[.]\\d+)?)");

  /** A footnote's mark at the end of a label's word: "Capacity*2", "Capacity2", "Impedance (3)". */
  private static final Pattern MARK =
      Pattern.compile("\\p{L}{3,}[*'\"]?\\d\\)?(?=\\s|$)|[*]\\d|\\(\\d\\)");

  private final Entry entry;
  private final List<Passage> beside = new ArrayList<>();

  private LostConditions(Entry entry, Passage piece, Figure figure) {
    this.entry = entry;
    beside.add(entry.conditions());
    for (Entry.Value value : entry.values()) {
      if (value.text().sharesWords(piece)) {
        beside.add(value.conditions());
        if (value.heading().text().chars().anyMatch(Character::isDigit)) {
          beside.add(value.heading());
        }
      }
    }
    beside.add(piece.part(0, figure.start()));
    beside.add(piece.part(figure.end(), piece.text().length()));
  }

  /** Why a figure of a piece may hold under more conditions than those understood. */
  static List<String> doubts(Entry entry, Passage piece, Figure figure) {
    LostConditions lost = new LostConditions(entry, piece, figure);
    List<String> doubts = new ArrayList<>();
    double least = lost.confidence();
    if (least < Reconciler.CONFIDENT) {
      doubts.add(
          "the conditions beside it were recognised from a picture with confidence "
              + Reconciler.shown(least));
    }
    if (lost.hasNumberWithoutUnit()) {
      doubts.add("a number without its unit was recognised beside it");
    }
    if (lost.hasOpenMark()) {
      doubts.add("its label carries a mark whose note was not recognised: " + entry.label());
    }
    return doubts;
  }

  private double confidence() {
    return beside.stream()
        .map(LostConditions::confidence)
        .mapToDouble(own -> own == null ? 1 : own)
        .min()
        .orElse(1);
  }

  private static Double confidence(Passage passage) {
    return passage.recognisedConfidence(0, passage.text().length());
  }

  private boolean hasNumberWithoutUnit() {
    return beside.stream()
        .filter(passage -> confidence(passage) != null)
        .anyMatch(passage -> isBare(passage.text()));
  }

  private static boolean isBare(String text) {
    if (BARE_NUMBER.matcher(text).find()) {
      return true;
    }
    Matcher range = FROM_TO.matcher(text);
    while (range.find()) {
      if (Double.parseDouble(range.group(1)) > Double.parseDouble(range.group(2))) {
        return true;
      }
    }
    return false;
  }

  private boolean hasOpenMark() {
    return beside.stream().allMatch(Passage::isBlank)
        && entry.labels().stream()
            .anyMatch(label -> confidence(label) != null && MARK.matcher(label.text()).find());
  }
}
