package commonsheet.chart.points;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.NumberStyle;
import commonsheet.quantity.Units;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The head of a column: {@code Voltage / V}, {@code Current (mA)}, {@code time [h]}, {@code
 * voltage_volt}, or an IRI that ends so.
 *
 * @param text as it stands in the file
 * @param meaning what it names; null for a column of something else
 * @param unit UCUM code of the unit its numbers are in; null where it names none
 * @param clock whether its cells are times of the form 1:30:00
 * @param logarithmic whether it is the head of a logarithmic axis: {@code log time / s}
 */
record Heading(
    String text,
    ColumnVocabulary.Meaning meaning,
    String unit,
    boolean clock,
    boolean logarithmic) {
  private static final FigureParser FIGURES = new FigureParser(NumberStyle.DECIMAL_POINT);

  /** A name, then a unit behind a slash, in brackets, or behind "in". */
  private static final Pattern WITH_UNIT =
      Pattern.compile("(.+?)\\s*(?:/|\\(|\\[|\\sin\\s)\\s*([^)\\]]*?)\\s*[)\\]]?");

  private static final Pattern CLOCK = Pattern.compile("(?i)(d+ )?hh?:m[min]*:ss?(\\.\\w+)?");
  private static final String LOGARITHMIC = "log ";

  static Heading of(String cell) {
    String text = cell.strip();
    boolean logarithmic = text.regionMatches(true, 0, LOGARITHMIC, 0, LOGARITHMIC.length());
    String rest = logarithmic ? text.substring(LOGARITHMIC.length()) : text;
    String bare = rest.startsWith("http") ? rest.substring(rest.lastIndexOf('#') + 1) : rest;
    ColumnVocabulary.Meaning whole = ColumnVocabulary.standard().meaning(bare);
    if (whole != null) {
      return new Heading(text, whole, whole.fixesUnit() ? whole.unit() : null, false, logarithmic);
    }
    Matcher parts = WITH_UNIT.matcher(bare);
    ColumnVocabulary.Meaning meaning =
        parts.matches() ? ColumnVocabulary.standard().meaning(parts.group(1)) : null;
    if (meaning == null) {
      return new Heading(text, null, null, false, logarithmic);
    }
    String unit = parts.group(2);
    boolean clock = CLOCK.matcher(unit).matches();
    return new Heading(text, meaning, clock ? null : ucum(unit, meaning), clock, logarithmic);
  }

  boolean names(String quantity) {
    return meaning != null && meaning.quantity().equals(quantity);
  }

  /** A number of the column in the unit its quantity is kept in. */
  double canonical(double number) {
    return Units.convert(number, unit, meaning.unit());
  }

  /** The UCUM code of a unit as it is written; null for one that the quantity is not told in. */
  private static String ucum(String unit, ColumnVocabulary.Meaning meaning) {
    if (unit.equals(meaning.unit())) {
      return unit;
    }
    List<Figure> figures = FIGURES.find("1 " + unit);
    if (figures.size() != 1 || figures.get(0).unit() == null) {
      return null;
    }
    String found = figures.get(0).unit().ucum();
    boolean lostDegree =
        figures.get(0).unit().dimension() == Dimension.RATE && meaning.unit().equals("Cel");
    if (lostDegree) {
      return "Cel";
    }
    try {
      Units.convert(1, found, meaning.unit());
      return found;
    } catch (IllegalArgumentException other) {
      return null;
    }
  }
}
