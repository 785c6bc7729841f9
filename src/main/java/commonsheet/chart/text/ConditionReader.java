package commonsheet.chart.text;

import commonsheet.quantity.Bound;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.NumberStyle;
import commonsheet.record.Conditions;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads conditions from captions, boxes and labels: "Charge: CC-CV 0.5C (max) 4.20V, 65mA cut-off
 * at 25°C". What a figure means follows from its unit, from whether charge or discharge was last
 * spoken of, and from a word for the end of it close by.
 */
public final class ConditionReader {
  /** C/5, 1/5C, C5/10: a rate by its time. */
  private static final Pattern FRACTION =
      Pattern.compile("(?<![\\w.])(?:C[0-9]?\\s?/\\s?([0-9.]+)|1\\s?/\\s?([0-9.]+)\\s?C)(?![\\w])");

  private static final Pattern SOC =
      Pattern.compile(
          "(?i)(?:SOC\\s*[:=]?\\s*([0-9.]+)\\s?%)|(?:([0-9.]+)\\s?%\\s*(?:SOC|state of charge))");

  /** An end is named this close to its figure, in characters. */
  private static final int CLOSE = 12;

  private final FigureParser figures;
  private final ChartWords words = ChartWords.standard();

  public ConditionReader(NumberStyle style) {
    this.figures = new FigureParser(style);
  }

  /** Conditions said of the charge, of the discharge, and of either. */
  public record Said(Conditions charge, Conditions discharge, Conditions either) {
    public static final Said NOTHING = new Said(Conditions.NONE, Conditions.NONE, Conditions.NONE);

    public Said and(Said more) {
      return new Said(
          charge.withMissingFrom(more.charge),
          discharge.withMissingFrom(more.discharge),
          either.withMissingFrom(more.either));
    }

    public boolean isEmpty() {
      return charge.isEmpty() && discharge.isEmpty() && either.isEmpty();
    }
  }

  /**
   * The conditions of a text.
   *
   * @param before what was spoken of before it
   */
  public Said read(String text, Context before) {
    String folded = ChartText.folded(text);
    String lower = ChartText.lower(text);
    List<PhraseFinder.Found<Context>> turns = words.contexts().find(lower);
    Said said = Said.NOTHING;
    for (Figure figure : figures.find(folded)) {
      boolean bounded =
          figure.bound() != Bound.NONE
              && figure.unit() != null
              && figure.unit().dimension() == Dimension.TEMPERATURE;
      if (figure.isRange() || figure.unit() == null || bounded || inFraction(folded, figure)) {
        continue;
      }
      Context context = contextAt(turns, figure.start(), before);
      said = said.and(meaning(figure, lower, context));
    }
    Matcher fraction = FRACTION.matcher(folded);
    while (fraction.find()) {
      String time = fraction.group(1) == null ? fraction.group(2) : fraction.group(1);
      double rate = 1 / Double.parseDouble(time);
      if (Double.isFinite(rate)) {
        said = said.and(rate(rate, contextAt(turns, fraction.start(), before)));
      }
    }
    Matcher soc = SOC.matcher(folded);
    if (soc.find()) {
      String share = soc.group(1) == null ? soc.group(2) : soc.group(1);
      said = said.and(either(Conditions.STATE_OF_CHARGE, Double.parseDouble(share)));
    }
    return said;
  }

  /** What the last word about charge or discharge before a place says. */
  public Context contextAfter(String text, Context before) {
    return contextAt(words.contexts().find(ChartText.lower(text)), Integer.MAX_VALUE, before);
  }

  private static Context contextAt(
      List<PhraseFinder.Found<Context>> turns, int place, Context before) {
    Context context = before;
    for (PhraseFinder.Found<Context> turn : turns) {
      if (turn.start() < place) {
        context = turn.meaning();
      }
    }
    return context;
  }

  private static boolean inFraction(String text, Figure figure) {
    Matcher fraction = FRACTION.matcher(text);
    while (fraction.find()) {
      if (figure.start() < fraction.end() && figure.end() > fraction.start()) {
        return true;
      }
    }
    return false;
  }

  private Said meaning(Figure figure, String lower, Context context) {
    Dimension dimension = figure.unit().dimension();
    boolean end = isEnd(figure, lower);
    return switch (dimension) {
      case RATE -> end ? Said.NOTHING : rate(figure.value(), context);
      case CURRENT -> end ? Said.NOTHING : current(figure.in("A").value(), context);
      case VOLTAGE -> voltage(figure.in("V").value(), end, context);
      case TEMPERATURE -> temperature(figure.in("Cel").value(), context);
      case CYCLES -> either(Conditions.CYCLES, figure.value());
      default -> Said.NOTHING;
    };
  }

  /** Whether a word for the end stands close before or behind, with no other figure between. */
  private boolean isEnd(Figure figure, String lower) {
    int start = Math.min(figure.end(), lower.length());
    String behind = lower.substring(start, Math.min(lower.length(), start + CLOSE));
    int comma = firstOf(behind, ',', ';', '，');
    if (words.ends().isIn(comma < 0 ? behind : behind.substring(0, comma))) {
      return true;
    }
    String before =
        lower.substring(
            Math.max(0, figure.start() - CLOSE), Math.min(figure.start(), lower.length()));
    int last = Math.max(before.lastIndexOf(','), before.lastIndexOf(';'));
    return words.ends().isIn(last < 0 ? before : before.substring(last + 1))
        && !before.matches(".*\\d.*");
  }

  private static int firstOf(String text, char... marks) {
    int first = -1;
    for (char mark : marks) {
      int at = text.indexOf(mark);
      first = at >= 0 && (first < 0 || at < first) ? at : first;
    }
    return first;
  }

  private static Said rate(double rate, Context context) {
    return split(Conditions.CHARGE_RATE, Conditions.DISCHARGE_RATE, rate, context);
  }

  private static Said current(double current, Context context) {
    return split(Conditions.CHARGE_CURRENT, Conditions.DISCHARGE_CURRENT, current, context);
  }

  private static Said split(String charge, String discharge, double value, Context context) {
    Conditions charged = Conditions.NONE.with(charge, value);
    Conditions discharged = Conditions.NONE.with(discharge, value);
    return switch (context) {
      case CHARGE -> new Said(charged, Conditions.NONE, Conditions.NONE);
      case DISCHARGE -> new Said(Conditions.NONE, discharged, Conditions.NONE);
      case BOTH -> new Said(charged, discharged, Conditions.NONE);
      case UNSAID -> Said.NOTHING;
    };
  }

  private static Said voltage(double voltage, boolean end, Context context) {
    if (context == Context.CHARGE) {
      return new Said(
          Conditions.NONE.with(Conditions.CHARGE_VOLTAGE, voltage),
          Conditions.NONE,
          Conditions.NONE);
    }
    return context == Context.DISCHARGE || end
        ? new Said(
            Conditions.NONE,
            Conditions.NONE.with(Conditions.CUTOFF_VOLTAGE, voltage),
            Conditions.NONE)
        : Said.NOTHING;
  }

  private static Said temperature(double temperature, Context context) {
    Conditions at = Conditions.NONE.with(Conditions.TEMPERATURE, temperature);
    return switch (context) {
      case CHARGE -> new Said(at, Conditions.NONE, Conditions.NONE);
      case DISCHARGE -> new Said(Conditions.NONE, at, Conditions.NONE);
      default -> new Said(Conditions.NONE, Conditions.NONE, at);
    };
  }

  private static Said either(String name, double value) {
    return new Said(Conditions.NONE, Conditions.NONE, Conditions.NONE.with(name, value));
  }
}
