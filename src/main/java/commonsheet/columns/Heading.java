package commonsheet.columns;

import commonsheet.quantity.Units;
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
public record Heading(
    String text,
    ColumnVocabulary.Meaning meaning,
    String unit,
    boolean clock,
    boolean logarithmic) {
  /** A name, then a unit behind a slash, in brackets, behind "in", or as the last word. */
  private static final Pattern WITH_UNIT =
      Pattern.compile("(.+?)\\s*(?:/|\\(|\\[|\\sin\\s)\\s*([^)\\]]*?)\\s*[)\\]]?");

  private static final Pattern UNIT_AS_WORD = Pattern.compile("(.+?)[\\s_]+(\\p{L}+)");

  private static final Pattern CLOCK = Pattern.compile("(?i)(d+ )?hh?:m[min]*:ss?(\\.\\w+)?");
  private static final String LOGARITHMIC = "log ";

  public static Heading of(String cell) {
    String text = cell.strip();
    boolean logarithmic = text.regionMatches(true, 0, LOGARITHMIC, 0, LOGARITHMIC.length());
    String rest = logarithmic ? text.substring(LOGARITHMIC.length()) : text;
    String bare = rest.startsWith("http") ? rest.substring(rest.lastIndexOf('#') + 1) : rest;
    ColumnVocabulary.Meaning whole = ColumnVocabulary.standard().meaning(bare);
    if (whole != null) {
      return new Heading(text, whole, whole.fixesUnit() ? whole.unit() : null, false, logarithmic);
    }
    Matcher parts = WITH_UNIT.matcher(bare);
    if (parts.matches() && ColumnVocabulary.standard().meaning(parts.group(1)) != null) {
      return withUnit(
          text, ColumnVocabulary.standard().meaning(parts.group(1)), parts.group(2), logarithmic);
    }
    Matcher words = UNIT_AS_WORD.matcher(bare);
    if (words.matches() && ColumnVocabulary.standard().meaning(words.group(1)) != null) {
      Heading heading =
          withUnit(
              text,
              ColumnVocabulary.standard().meaning(words.group(1)),
              words.group(2),
              logarithmic);
      return heading.unit() == null ? new Heading(text, null, null, false, logarithmic) : heading;
    }
    return new Heading(text, null, null, false, logarithmic);
  }

  private static Heading withUnit(
      String text, ColumnVocabulary.Meaning meaning, String unit, boolean logarithmic) {
    boolean clock = CLOCK.matcher(unit).matches();
    return new Heading(text, meaning, clock ? null : ucum(unit, meaning), clock, logarithmic);
  }

  /**
   * The head of a column that a person chose for a quantity, whatever its name: only its unit is
   * read from it.
   */
  public static Heading chosen(String cell, String quantity) {
    ColumnVocabulary.Meaning meaning = ColumnVocabulary.standard().meaning(quantity);
    Heading named = of(cell);
    if (named.names(quantity)) {
      return named;
    }
    Matcher parts = WITH_UNIT.matcher(cell.strip());
    Matcher words = UNIT_AS_WORD.matcher(cell.strip());
    String unit = parts.matches() ? parts.group(2) : words.matches() ? words.group(2) : "";
    return withUnit(cell.strip(), meaning, unit, false);
  }

  public boolean names(String quantity) {
    return meaning != null && meaning.quantity().equals(quantity);
  }

  /** The same head with its name taken for that of something else. */
  public Heading withoutMeaning() {
    return new Heading(text, null, null, false, logarithmic);
  }

  /** A number of the column in the unit its quantity is kept in. */
  public double canonical(double number) {
    return Units.convert(number, unit, meaning.unit());
  }

  /** The UCUM code of a unit as it is written; null for one that the quantity is not told in. */
  private static String ucum(String unit, ColumnVocabulary.Meaning meaning) {
    if (unit.equals(meaning.unit())) {
      return unit;
    }
    String found = Units.code(unit).orElse(null);
    if (found == null) {
      return null;
    }
    boolean lostDegree = found.equals("h-1") && meaning.unit().equals("Cel");
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
