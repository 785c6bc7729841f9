package commonsheet.layout;

import commonsheet.quantity.Bound;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.QuantityKind;
import java.util.ArrayList;
import java.util.List;

/** Which figures can be the value of a quantity, by their unit and shape. */
final class Fit {
  /** So many characters may stand beside a number without a unit. Common practice, no source. */
  private static final int LONGEST_BESIDE_BARE = 24;

  /**
   * A value printed again in another unit is rounded by no more than this share. Common practice,
   * no source.
   */
  private static final double ROUNDED = 0.03;

  private Fit() {}

  static boolean fits(QuantityKind kind, Figure figure) {
    if (figure.unit() == null) {
      return unitLeavesNoDoubt(kind, figure);
    }
    Dimension dimension = figure.unit().dimension();
    if (kind.range()) {
      // A temperature with a tolerance is that of a test, except where a storage is recommended.
      boolean wide =
          figure.isRange() || (kind.name().equals("storageTemperature") && figure.low() != null);
      return dimension == Dimension.TEMPERATURE && wide;
    }
    if (figure.value() == null
        && (kind.dimension() == Dimension.VOLTAGE || kind.dimension() == Dimension.CURRENT)) {
      return false; // a window to keep within, not a rating
    }
    if (kind.name().startsWith("capacityRe")
        && (figure.bound() == Bound.AT_MOST || figure.value() == null)) {
      return false; // a loss
    }
    if (kind.dimension() == Dimension.CURRENT) {
      // mAh printed where mA is meant is a common slip; it is read, with a doubt.
      return dimension == Dimension.CURRENT
          || dimension == Dimension.RATE
          || dimension == Dimension.CHARGE;
    }
    return dimension == kind.dimension();
  }

  /** A bare number takes the unit of its quantity only where nothing else is ever printed there. */
  private static boolean unitLeavesNoDoubt(QuantityKind kind, Figure figure) {
    return switch (kind.dimension()) {
      case CYCLES -> figure.value() != null && figure.value() >= 50 && !figure.text().contains(".");
      case LENGTH -> figure.value() != null && figure.value() >= 0.3 && figure.value() <= 400;
      case TEMPERATURE -> figure.isRange();
      case VOLTAGE -> figure.value() != null && figure.value() >= 1.4 && figure.value() <= 4.6;
      default -> false;
    };
  }

  /** A number without a unit is a value only where little else stands beside it. */
  static boolean isPlain(Figure figure, Passage piece) {
    return figure.unit() != null
        || piece.text().trim().length() <= figure.text().length() + LONGEST_BESIDE_BARE;
  }

  /**
   * Of the figures that fit a quantity those that are its values: with a unit before those without,
   * amperes before multiples of C, and no further ones that stand in a bracket or after a word that
   * opens a condition.
   */
  static List<Figure> values(QuantityKind kind, List<Figure> fitting, String text) {
    List<Figure> figures = preferPrinted(fitting);
    if (kind.dimension() == Dimension.CURRENT) {
      figures = preferAmperes(figures);
    }
    List<Figure> values = new ArrayList<>();
    for (Figure figure : figures) {
      if (!values.isEmpty() && repeats(values.get(0), figure, kind)) {
        continue;
      }
      if (values.isEmpty()
          || figure.qualifier() != null
          || !opensCondition(text.substring(values.get(values.size() - 1).end(), figure.start()))) {
        values.add(figure);
      }
    }
    return values;
  }

  private static List<Figure> preferPrinted(List<Figure> figures) {
    List<Figure> printed = figures.stream().filter(f -> f.unit() != null).toList();
    return printed.isEmpty() ? figures : printed;
  }

  static List<Figure> preferAmperes(List<Figure> figures) {
    List<Figure> amperes =
        figures.stream()
            .filter(f -> f.unit() != null && f.unit().dimension() == Dimension.CURRENT)
            .toList();
    return amperes.isEmpty() ? figures : amperes;
  }

  /** "46 g / 1.62 oz": the same value in another unit. */
  private static boolean repeats(Figure first, Figure other, QuantityKind kind) {
    if (first.unit() == null
        || other.unit() == null
        || first.value() == null
        || other.value() == null
        || first.unit().equals(other.unit())
        || first.unit().dimension() != kind.dimension()
        || other.unit().dimension() != kind.dimension()) {
      return false;
    }
    double a = first.in(kind.unit()).value();
    double b = other.in(kind.unit()).value();
    return Math.abs(a - b) <= ROUNDED * Math.abs(a);
  }

  private static boolean opensCondition(String between) {
    return between.contains("(")
        || between.contains("\uFF08")
        || between.contains("@")
        || Tokens.of(between).size() > 1;
  }
}
