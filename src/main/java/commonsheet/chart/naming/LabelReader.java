package commonsheet.chart.naming;

import commonsheet.chart.text.AxisMeasure;
import commonsheet.chart.text.ChartText;
import commonsheet.chart.text.ChartWords;
import commonsheet.chart.text.ConditionReader;
import commonsheet.chart.text.Context;
import commonsheet.chart.text.Measure;
import commonsheet.chart.text.TitleReader;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.NumberStyle;
import commonsheet.record.Conditions;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the label of a curve: "0.2C", "1.0It (2150mA)", "-20℃", "C/5", "Voltage". */
public final class LabelReader {
  private static final Pattern LONE_C = Pattern.compile("([+-]?[0-9]+(?:[.,][0-9]+)?)\\s?[Cc]");

  /** "05C" has lost its decimal point; "-0.2C" has got a sign that is none. */
  private static final Pattern LOST_POINT =
      Pattern.compile(
          "(?:^|\\D)0[0-9]+\\s?(?:C|It|m?A)|-\\s?[0-9.]+\\s?(?:It|m?A)\\b|-\\s?0?\\.[0-9]+\\s?C");

  private static final Pattern ORDINAL =
      Pattern.compile("(?i)(?:cycle\\s*(?:no\\.?)?\\s*)?([0-9]+)(?:st|nd|rd|th)(?:\\s*cycles?)?");

  private static final Pattern NUMBERED_CYCLE =
      Pattern.compile("(?i)cycle\\s*(?:no\\.?|number)?\\s*:?\\s*([0-9]+)");

  private final Context context;
  private final ConditionReader conditions;
  private final FigureParser figures;
  private final ChartWords words = ChartWords.standard();

  /**
   * @param context whether the chart's curves are charges or discharges
   */
  public LabelReader(Context context, NumberStyle style) {
    this.context = context;
    this.conditions = new ConditionReader(style);
    this.figures = new FigureParser(style);
  }

  /** What a text says; empty where it says nothing of a curve. */
  public LabelMeaning read(String text) {
    String folded = ChartText.folded(text);
    Matcher lone = LONE_C.matcher(folded);
    if (lone.matches()) {
      double number = Double.parseDouble(lone.group(1).replace(',', '.'));
      String name = number < 0 || number >= 30 ? Conditions.TEMPERATURE : rate();
      boolean plain = !LOST_POINT.matcher(folded).find();
      return new LabelMeaning(Conditions.NONE.with(name, number), null, plain, number);
    }
    Matcher cycle = ORDINAL.matcher(folded);
    Matcher numbered = NUMBERED_CYCLE.matcher(folded);
    if (cycle.matches() || numbered.matches()) {
      double number = Double.parseDouble(cycle.matches() ? cycle.group(1) : numbered.group(1));
      return new LabelMeaning(Conditions.NONE.with(Conditions.CYCLES, number), null, true, null);
    }
    ConditionReader.Said said = conditions.read(folded, context);
    Conditions all = said.discharge().withMissingFrom(said.either()).withMissingFrom(said.charge());
    return new LabelMeaning(all, all.isEmpty() ? measure(folded) : null, isPlain(folded), null);
  }

  public String rate() {
    return context == Context.CHARGE ? Conditions.CHARGE_RATE : Conditions.DISCHARGE_RATE;
  }

  /** The only quantity a text names, or null. */
  private Measure measure(String text) {
    List<Measure> named =
        TitleReader.read(text).stream().map(AxisMeasure::measure).distinct().toList();
    boolean spelled = words.measures().isIn(ChartText.lower(text));
    return spelled && named.size() == 1 && text.length() < 40 ? named.get(0) : null;
  }

  /** Whether every word is a figure, a known word of labels, or a quantity. */
  private boolean isPlain(String folded) {
    StringBuilder rest = new StringBuilder(folded);
    for (Figure figure : figures.find(folded)) {
      for (int i = figure.start(); i < figure.end(); i++) {
        rest.setCharAt(i, ' ');
      }
    }
    if (LOST_POINT.matcher(folded).find()) {
      return false;
    }
    String unread = rest.toString().replaceAll("C[0-9]?\\s?/\\s?[0-9.]+", " ");
    if (words.measures().isIn(unread.toLowerCase(java.util.Locale.ROOT))) {
      return true;
    }
    for (String word : unread.split("[\\s()\\[\\],;:/=]+", -1)) {
      if (!word.isEmpty() && word.chars().anyMatch(Character::isLetterOrDigit)) {
        if (!words.isLabelWord(word)) {
          return false;
        }
      }
    }
    return true;
  }
}
