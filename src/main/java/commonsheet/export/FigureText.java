package commonsheet.export;

import commonsheet.compare.Figure;
import commonsheet.compare.Origin;
import commonsheet.quantity.PlainNumber;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * A figure in a few characters: its number, no finer than it is known, and marks of where it comes
 * from.
 */
public final class FigureText {
  /** What stands where nothing is known. */
  public static final String NONE = "-";

  /** A datasheet prints three figures, at the most four. */
  private static final int PRINTED_DIGITS = 4;

  /** What is computed from such figures, and whose uncertainty is not known. */
  private static final int DIGITS = 3;

  static final String UNSURE = "?";

  /** A half-width of 0.1 that comes out as 0.09999 is one of 0.1. */
  private static final MathContext WITHOUT_NOISE = new MathContext(2);

  private FigureText() {}

  /** The number and its marks, such as {@code 3.81~}, {@code ≤ 2.9?} or {@code -}. */
  public static String of(Figure figure) {
    return figure.origin() == Origin.ABSENT ? NONE : number(figure) + mark(figure);
  }

  /** The same in a table in which all is computed, so that this needs no mark of its own. */
  static String ofComputed(Figure figure) {
    return figure.origin() == Origin.DERIVED
        ? number(figure) + (figure.unsure() ? UNSURE : "")
        : of(figure);
  }

  /** The number alone, with ≤ or ≥ before a bound; empty for an absent one. */
  public static String number(Figure figure) {
    if (figure.isKnown()) {
      boolean printed = figure.origin() == Origin.STATED;
      return number(figure.value(), halfWidth(figure), printed ? PRINTED_DIGITS : DIGITS);
    }
    if (figure.high() != null) {
      return "≤ " + bound(figure.high(), RoundingMode.CEILING);
    }
    return figure.low() == null ? "" : "≥ " + bound(figure.low(), RoundingMode.FLOOR);
  }

  /** One end of what a known figure may be, rounded as the figure itself is. */
  public static String end(Figure figure, double end) {
    boolean printed = figure.origin() == Origin.STATED;
    return number(end, halfWidth(figure), printed ? PRINTED_DIGITS : DIGITS);
  }

  /** Rounded away from what is known, so that a bound stays one. */
  private static String bound(double bound, RoundingMode away) {
    BigDecimal exact = BigDecimal.valueOf(bound);
    return PlainNumber.of(exact.setScale(scale(exact, DIGITS), away));
  }

  /** The marks alone. */
  public static String mark(Figure figure) {
    return mark(figure.origin()) + (figure.unsure() ? UNSURE : "");
  }

  private static String mark(Origin origin) {
    return switch (origin) {
      case STATED, BOUNDED, ABSENT -> "";
      case CURVE -> "=";
      case INTERPOLATED -> "~";
      case DERIVED -> "+";
      case MODELLED -> "*";
    };
  }

  /** What the marks of these figures mean: only of those that occur, in a fixed order. */
  public static List<String> legend(Collection<Figure> figures) {
    List<String> lines = new ArrayList<>();
    for (Origin origin : Origin.values()) {
      if (figures.stream().anyMatch(figure -> figure.origin() == origin)) {
        lines.add(meaning(origin));
      }
    }
    if (figures.stream().anyMatch(Figure::unsure)) {
      lines.add(
          UNSURE + " rests on something that is in doubt or on an assumption; compare the sheet");
    }
    return lines;
  }

  private static String meaning(Origin origin) {
    return switch (origin) {
      case STATED -> "no mark: stated by the sheet";
      case CURVE -> "= from the digitised curve at this very current";
      case INTERPOLATED -> "~ between the curves of the currents on either side";
      case DERIVED -> "+ computed from other figures of the cell";
      case MODELLED -> "* from printed values by a model, since no curve serves";
      case BOUNDED -> "≤, ≥ only a bound is known";
      case ABSENT -> NONE + " not known, for the reason given below";
    };
  }

  /** Half of what lies between the bounds; 0 where they are not known. */
  private static double halfWidth(Figure figure) {
    if (figure.low() == null || figure.high() == null) {
      return 0;
    }
    return (figure.high() - figure.low()) / 2;
  }

  /** Rounded to the first digit of its half-width, and to so many digits at the most. */
  private static String number(double value, double halfWidth, int digits) {
    BigDecimal exact = BigDecimal.valueOf(value);
    if (halfWidth <= 0) {
      return PlainNumber.of(exact.setScale(scale(exact, digits), RoundingMode.HALF_EVEN));
    }
    BigDecimal width = BigDecimal.valueOf(halfWidth).round(WITHOUT_NOISE);
    int first = width.scale() - width.precision() + 1;
    int scale = Math.max(0, Math.min(scale(exact, PRINTED_DIGITS), first));
    return exact.setScale(scale, RoundingMode.HALF_EVEN).toPlainString();
  }

  /** Digits behind the point; those before it are never rounded away. */
  private static int scale(BigDecimal number, int digits) {
    int whole = number.signum() == 0 ? 1 : number.precision() - number.scale();
    return Math.max(0, digits - Math.max(whole, 1));
  }
}
