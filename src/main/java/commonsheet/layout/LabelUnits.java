package commonsheet.layout;

import commonsheet.quantity.Figure;
import commonsheet.quantity.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Units that labels and columns give for the bare numbers beside them: "Weight (g)", "Temperature
 * [°C]", "mAh".
 */
final class LabelUnits {
  private static final Pattern IN_BRACKETS =
      Pattern.compile("[(\\[\uFF08]\\s*([^()\\[\\]\\d]{1,8}?)\\s*[)\\]\uFF09]");

  private final Figures parser;

  LabelUnits(Figures parser) {
    this.parser = parser;
  }

  /** The unit that a label gives in brackets; empty where it gives none. */
  String inBrackets(String label) {
    Matcher bracket = IN_BRACKETS.matcher(label);
    while (bracket.find()) {
      if (isUnit(bracket.group(1))) {
        return bracket.group(1);
      }
    }
    return "";
  }

  /** Whether a text is a unit and nothing else. */
  boolean isUnit(String text) {
    if (text.isEmpty() || Character.isDigit(text.charAt(0))) {
      return false;
    }
    List<Figure> figures = parser.find("1 " + text);
    return figures.size() == 1
        && figures.get(0).unit() != null
        && figures.get(0).end() >= text.length() + 2;
  }

  /** The figures of a text; those without a unit get the one given, which may be empty. */
  List<Figure> figures(String text, String unitText) {
    return withUnit(parser.find(text), unitText);
  }

  /** "2500/2600 mAh": a number before a stroke shares the unit behind it. */
  static List<Figure> sharedBySlash(String text, List<Figure> figures) {
    List<Figure> shared = new ArrayList<>(figures);
    for (int i = figures.size() - 2; i >= 0; i--) {
      Figure figure = shared.get(i);
      Figure next = shared.get(i + 1);
      boolean stroke = text.substring(figure.end(), next.start()).trim().equals("/");
      if (stroke && figure.unit() == null && next.unit() != null) {
        shared.set(i, with(figure, next.unit()));
      }
    }
    return shared;
  }

  private static Figure with(Figure f, TradeUnit unit) {
    return new Figure(
        f.start(),
        f.end(),
        f.text(),
        f.value(),
        f.low(),
        f.high(),
        f.bound(),
        f.qualifier(),
        f.approximate(),
        unit,
        f.ambiguous());
  }

  /** The same figures; those without a unit get the one given, which may be empty. */
  List<Figure> withUnit(List<Figure> figures, String unitText) {
    if (unitText == null || unitText.isBlank()) {
      return figures;
    }
    List<Figure> unit = parser.find("1 " + unitText);
    if (unit.isEmpty() || unit.get(0).unit() == null) {
      return figures;
    }
    return figures.stream().map(f -> f.unit() != null ? f : with(f, unit.get(0).unit())).toList();
  }
}
