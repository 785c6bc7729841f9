package commonsheet.cli;

import commonsheet.record.Statistic;
import commonsheet.review.Correction;
import commonsheet.review.ReviewException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What a person types for a value, read as the record has it. */
final class Typed {
  private static final String NONE = "none";

  private Typed() {}

  /** Whether a word takes something away. */
  static boolean isNone(String word) {
    return word != null && word.strip().equalsIgnoreCase(NONE);
  }

  /** Conditions such as {@code temperature=25}; null as a value takes one away. */
  static Map<String, Double> conditions(List<String> words) throws ReviewException {
    Map<String, Double> conditions = new LinkedHashMap<>();
    for (String word : words) {
      String[] parts = word.split("=", 2);
      if (parts.length < 2) {
        throw new ReviewException("\"" + word + "\" is no condition; write it as temperature=25");
      }
      conditions.put(parts[0].strip(), isNone(parts[1]) ? null : number(parts[1], "--condition"));
    }
    return conditions;
  }

  /** Bounds such as {@code -20..60}; null where none are typed. */
  static Correction.Bounds bounds(String word) throws ReviewException {
    if (word == null) {
      return null;
    }
    if (isNone(word)) {
      return Correction.NO_BOUNDS;
    }
    String[] ends = word.split("\\.\\.", 2);
    if (ends.length < 2) {
      throw new ReviewException("\"" + word + "\" is no range; write it as -20..60");
    }
    return new Correction.Bounds(number(ends[0], "--range"), number(ends[1], "--range"));
  }

  /** A statistic by its name; null where none is typed, or the word for none. */
  static Statistic statistic(String word) throws ReviewException {
    if (word == null || isNone(word)) {
      return null;
    }
    for (Statistic known : Statistic.values()) {
      if (known.label().equals(word.strip().toLowerCase(Locale.ROOT))) {
        return known;
      }
    }
    throw new ReviewException(
        "\"" + word + "\" is none of nominal, typical, rated, minimum, maximum, standard");
  }

  /** A place as {@code x,y,width,height} in points. */
  static List<Double> box(String word) throws ReviewException {
    List<Double> box = new ArrayList<>();
    for (String number : word.split(",", -1)) {
      box.add(number(number, "--box"));
    }
    if (box.size() != 4 || box.get(2) < 0 || box.get(3) < 0) {
      throw new ReviewException(
          "\"" + word + "\" is no place; write it as x,y,width,height in points from the top left");
    }
    return box;
  }

  private static double number(String word, String option) throws ReviewException {
    try {
      double number = Double.parseDouble(word.strip());
      if (Double.isFinite(number)) {
        return number;
      }
    } catch (NumberFormatException noNumber) {
      // Said below.
    }
    throw new ReviewException(
        "\"" + word + "\" in " + option + " is no number; write it with a point, such as 2.5");
  }
}
