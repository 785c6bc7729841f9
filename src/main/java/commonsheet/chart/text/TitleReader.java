package commonsheet.chart.text;

import commonsheet.quantity.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the title of an axis: quantity and unit, or several of them in a row. */
public final class TitleReader {
  /** What can be a unit behind a quantity: in brackets, after a slash or comma, or plain. */
  private static final Pattern BRACKETED = Pattern.compile("[(\\[（【]([^()\\[\\]]+)[)\\]）】]");

  private static final Pattern SLASHED = Pattern.compile("(?:/|,|:| in )\\s*([^\\s/,:]+.*)");

  private static final ChartWords WORDS = ChartWords.standard();

  private TitleReader() {}

  /**
   * What a title says the axis shows.
   *
   * @return none where the text names no quantity, unless it is a unit that only one has
   */
  public static List<AxisMeasure> read(String text) {
    String folded = ChartText.folded(text);
    List<PhraseFinder.Found<Measure>> found = WORDS.measures().find(ChartText.lower(text));
    if (found.isEmpty()) {
      return unitAlone(folded);
    }
    List<AxisMeasure> measures = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      int end = i + 1 < found.size() ? found.get(i + 1).start() : folded.length();
      Measure measure = found.get(i).meaning();
      TradeUnit unit = unit(folded.substring(Math.min(found.get(i).end(), end), end), measure);
      add(measures, new AxisMeasure(measure, unit));
    }
    return named(measures, folded);
  }

  /** What a title recognised in a picture says, with a letter wrong or spaces lost. */
  public static List<AxisMeasure> readRecognised(String text) {
    List<AxisMeasure> exact = read(text);
    if (!exact.isEmpty()) {
      return exact;
    }
    String folded = ChartText.folded(text);
    Measure measure = WORDS.measures().nearly(ChartText.lower(text));
    return measure == null
        ? behindUnreadable(folded)
        : List.of(new AxisMeasure(measure, unit(folded, measure)));
  }

  /** A unit in brackets that only one quantity has tells it, whatever its name was read as. */
  private static List<AxisMeasure> behindUnreadable(String text) {
    Matcher bracketed = BRACKETED.matcher(text);
    return bracketed.find() && bracketed.end() == text.length()
        ? unitAlone(bracketed.group(1))
        : List.of();
  }

  /** A second mention, as in another language, only adds the unit. */
  private static void add(List<AxisMeasure> measures, AxisMeasure next) {
    for (int i = 0; i < measures.size(); i++) {
      AxisMeasure known = measures.get(i);
      if (known.measure().equals(next.measure())) {
        if (known.unit() == null) {
          measures.set(i, next);
        }
        return;
      }
    }
    measures.add(next);
  }

  /**
   * Where several quantities are named but one unit is printed, the one it measures is meant:
   * "Cycle life, capacity (%)", "Voltage during discharge time (V)".
   */
  private static List<AxisMeasure> named(List<AxisMeasure> measures, String text) {
    if (measures.size() < 2) {
      return measures;
    }
    List<AxisMeasure> withUnit =
        measures.stream().filter(measure -> measure.unit() != null).toList();
    if (!withUnit.isEmpty()) {
      return withUnit;
    }
    TradeUnit unit = unit(text, null);
    List<AxisMeasure> fitting = new ArrayList<>();
    for (AxisMeasure measure : measures) {
      if (unit != null && WORDS.fits(measure.measure(), unit.dimension())) {
        fitting.add(new AxisMeasure(measure.measure(), unit));
      }
    }
    return fitting.isEmpty() ? measures : fitting;
  }

  private static List<AxisMeasure> unitAlone(String text) {
    TradeUnit unit = UnitText.of(text, null);
    Measure measure = unit == null ? null : WORDS.measuredIn(unit.dimension());
    return measure == null ? List.of() : List.of(new AxisMeasure(measure, unit));
  }

  /** The unit behind a quantity's name that fits it, or null. */
  private static TradeUnit unit(String behind, Measure measure) {
    Matcher bracketed = BRACKETED.matcher(behind);
    while (bracketed.find()) {
      TradeUnit unit = fitting(bracketed.group(1), measure);
      if (unit != null) {
        return unit;
      }
    }
    Matcher slashed = SLASHED.matcher(behind);
    if (slashed.find()) {
      TradeUnit unit = fitting(slashed.group(1), measure);
      if (unit != null) {
        return unit;
      }
    }
    return fitting(behind, measure);
  }

  private static TradeUnit fitting(String text, Measure measure) {
    for (String part : new String[] {text, text.replaceAll("[.,;:]+$", ""), firstPart(text)}) {
      TradeUnit unit = UnitText.of(part, measure);
      if (unit != null && (measure == null || WORDS.fits(measure, unit.dimension()))) {
        return unit;
      }
    }
    return null;
  }

  /** "% of initial" is per cent. */
  private static String firstPart(String text) {
    String[] parts = text.strip().split("\\s|,|;", 2);
    return parts[0];
  }
}
