package commonsheet.chart.text;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.NumberStyle;
import commonsheet.quantity.TradeUnit;
import java.util.List;

/** Units that stand without a number of their own, as in the title of an axis. */
public final class UnitText {
  private static final FigureParser FIGURES = new FigureParser(NumberStyle.DECIMAL_POINT);

  private UnitText() {}

  /**
   * The unit of a text that is nothing but a unit, such as {@code mAH}, {@code (V)} or {@code
   * hour}; null for any other text. A lone C is a degree Celsius where the measure is a
   * temperature.
   *
   * @param measure what is measured, or null
   */
  public static TradeUnit of(String text, Measure measure) {
    String bare = ChartText.folded(text).replaceAll("^[\\s(\\[{/,:;]+|[\\s)\\]},:;]+$", "");
    if (bare.isEmpty() || Character.isDigit(bare.charAt(0))) {
      return null;
    }
    boolean temperature = measure != null && measure.quantity().equals("temperature");
    if (temperature && bare.matches("(?i)[°*'^\"]?\\s?c|oC|deg\\.?")) {
      return new TradeUnit("Cel", Dimension.TEMPERATURE);
    }
    String withNumber = "3 " + bare;
    List<Figure> figures = FIGURES.find(withNumber);
    boolean whole = figures.size() == 1 && figures.get(0).end() == withNumber.length();
    return whole ? figures.get(0).unit() : null;
  }
}
