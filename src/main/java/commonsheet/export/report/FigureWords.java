package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.compare.Origin;
import commonsheet.export.FigureText;

/** A figure in words rather than marks. */
final class FigureWords {
  private FigureWords() {}

  /** Whether there is a value or a bound. */
  static boolean says(Figure figure) {
    return figure.origin() != Origin.ABSENT;
  }

  /** Such as {@code 3.81}, {@code ≥ 3.2 ?} or {@code not known}. */
  static String value(Figure figure) {
    return says(figure) ? FigureText.number(figure) + (figure.unsure() ? " ?" : "") : "not known";
  }

  /** What a value may be, such as {@code 3.77–3.85}; empty where that is not known. */
  static String range(Figure figure) {
    return figure.isKnown() && figure.low() != null && figure.high() != null
        ? FigureText.end(figure, figure.low()) + "–" + FigureText.end(figure, figure.high())
        : "";
  }

  /** Where it comes from, in one word. */
  static String origin(Figure figure) {
    return figure.origin().label();
  }

  /** How many decimals the figure is shown with. */
  static int decimals(Figure figure) {
    String shown = FigureText.number(figure);
    return shown.indexOf('.') < 0 ? 0 : shown.length() - shown.indexOf('.') - 1;
  }
}
