package commonsheet.check;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Statements in the words of a sentence. */
final class Wording {
  private static final int SIGNIFICANT_DIGITS = 6;

  /** How the units of records are printed, by their UCUM codes; others are printed as they are. */
  private static final Map<String, String> UNITS =
      Map.of(
          "A.h", "Ah",
          "W.h", "Wh",
          "mOhm", "mΩ",
          "Cel", "°C",
          "W.h/kg", "Wh/kg",
          "W.h/L", "Wh/L");

  private Wording() {}

  /** Such as {@code minimum capacity} or {@code maximum charge current}. */
  static String name(Statement statement) {
    String name = words(statement.quantity());
    Statistic statistic = statement.statistic();
    return statistic == null || name.startsWith(statistic.label())
        ? name
        : statistic.label() + " " + name;
  }

  /** Such as {@code maximum charge current} of the name {@code maximumChargeCurrent}. */
  static String words(String name) {
    return Arrays.stream(name.split("(?<=[a-z])(?=[A-Z])"))
        .map(word -> isAbbreviation(word) ? word : word.toLowerCase(Locale.ROOT))
        .collect(Collectors.joining(" "));
  }

  private static boolean isAbbreviation(String word) {
    return word.equals(word.toUpperCase(Locale.ROOT));
  }

  /** The value, or the range where there is no value, with its unit. */
  static String value(Statement statement) {
    String number =
        statement.value() != null
            ? number(statement.value())
            : number(statement.low()) + " to " + number(statement.high());
    return withUnit(number, statement.unit());
  }

  static String withUnit(String number, String unit) {
    return unit.equals("1") ? number : number + " " + UNITS.getOrDefault(unit, unit);
  }

  static String number(double value) {
    return PlainNumber.of(value, SIGNIFICANT_DIGITS);
  }

  /** The value and its page: {@code 2.5 V (page 3)}. */
  static String valueAndPage(Statement statement) {
    return valuesAndPages(List.of(statement));
  }

  /** Each value once with its pages: {@code 2.5 V (pages 3, 7) and 2.75 V (page 5)}. */
  static String valuesAndPages(List<Statement> statements) {
    Map<String, SortedSet<Integer>> pagesByValue = new LinkedHashMap<>();
    for (Statement statement : statements) {
      SortedSet<Integer> pages =
          pagesByValue.computeIfAbsent(value(statement), value -> new TreeSet<>());
      if (statement.evidence().page() != null) {
        pages.add(statement.evidence().page());
      }
    }
    List<String> parts = new ArrayList<>();
    pagesByValue.forEach((value, pages) -> parts.add(value + pages(pages)));
    return listed(parts);
  }

  private static String pages(SortedSet<Integer> pages) {
    if (pages.isEmpty()) {
      return "";
    }
    String numbers = String.join(", ", pages.stream().map(String::valueOf).toList());
    return (pages.size() == 1 ? " (page " : " (pages ") + numbers + ")";
  }

  private static String listed(List<String> parts) {
    int last = parts.size() - 1;
    return last == 0
        ? parts.get(0)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }
}
