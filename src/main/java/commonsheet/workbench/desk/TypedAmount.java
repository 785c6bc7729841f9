package commonsheet.workbench.desk;

import commonsheet.export.MeasureHead;
import commonsheet.quantity.Bound;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.GivenQuantity;
import commonsheet.quantity.NumberStyle;
import commonsheet.record.Statistic;
import commonsheet.review.ReviewException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a person typed for a value, in the unit of its quantity.
 *
 * @param value null for a range
 * @param low lower bound of a range or tolerance, or null, like {@code high}
 * @param statistic what the words beside the number say it is, such as that of {@code ≤ 20 mΩ};
 *     null where they say nothing
 */
record TypedAmount(Double value, Double low, Double high, Statistic statistic) {
  private static final FigureParser FIGURES = new FigureParser(NumberStyle.DECIMAL_POINT);

  /** 10,500 can be ten thousand five hundred as well as ten and a half. */
  private static final Pattern TWO_WAYS = Pattern.compile("(?<![\\d.,])\\d{1,3},\\d{3}(?![\\d,])");

  /** A value beside a range that it does not lie in the middle of, such as 50, 47 to 49 g. */
  private static final Pattern BESIDE = Pattern.compile("([-+−]?[\\d.]+),\\s+(.+)");

  private static final String EXAMPLES = "such as 3.35 Ah, 45 ± 1 g, 2.5 to 4.2 V or ≤ 20 mΩ";

  /**
   * Understands it.
   *
   * @param typed in any unit of the trade; a bare number is in {@code ucum}
   * @param ucum code of the quantity's unit
   * @throws ReviewException where it cannot be understood or in more than one way
   */
  static TypedAmount of(String typed, String ucum) throws ReviewException {
    String text = typed == null ? "" : typed.strip();
    if (text.isEmpty()) {
      throw new ReviewException("say what the sheet says, " + EXAMPLES);
    }
    if (TWO_WAYS.matcher(text).find()) {
      throw new ReviewException(
          "\"" + text + "\" can be read in two ways; write it with a decimal point or without one");
    }
    Matcher beside = BESIDE.matcher(text);
    if (beside.matches()) {
      TypedAmount range = figure(beside.group(2), ucum);
      if (range.value() == null) {
        double value = single(beside.group(1), ucum);
        return new TypedAmount(value, range.low(), range.high(), range.statistic());
      }
    }
    try {
      return new TypedAmount(GivenQuantity.parse(text, ucum), null, null, null);
    } catch (IllegalArgumentException notSoSimple) {
      return figure(text, ucum);
    }
  }

  /** A number in a unit, for conditions. */
  static double single(String typed, String ucum) throws ReviewException {
    try {
      return GivenQuantity.parse(typed, ucum);
    } catch (IllegalArgumentException unusable) {
      throw new ReviewException(
          "\"" + typed + "\" is not understood; write a number in a unit such as " + shown(ucum));
    }
  }

  private static TypedAmount figure(String text, String ucum) throws ReviewException {
    List<Figure> figures = FIGURES.find(text);
    if (figures.size() != 1 || !covers(figures.get(0), text)) {
      throw new ReviewException(
          "\"" + text + "\" is not understood; write a number with its unit, " + EXAMPLES);
    }
    Figure figure = figures.get(0);
    if (figure.unit() != null) {
      try {
        figure = figure.in(ucum);
      } catch (IllegalArgumentException other) {
        throw new ReviewException(
            "\"" + text + "\" cannot be given in " + shown(ucum) + ", its unit here");
      }
    }
    return new TypedAmount(figure.value(), figure.low(), figure.high(), statistic(figure));
  }

  private static String shown(String ucum) {
    return switch (ucum) {
      case "h-1" -> "C";
      case "1" -> "none at all";
      default -> MeasureHead.unit(ucum);
    };
  }

  private static boolean covers(Figure figure, String text) {
    return text.substring(0, figure.start()).isBlank() && text.substring(figure.end()).isBlank();
  }

  private static Statistic statistic(Figure figure) {
    if (figure.qualifier() != null) {
      return Statistic.valueOf(figure.qualifier().name());
    }
    return figure.bound() == Bound.NONE
        ? null
        : figure.bound() == Bound.AT_LEAST ? Statistic.MINIMUM : Statistic.MAXIMUM;
  }
}
