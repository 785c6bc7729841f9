package commonsheet.quantity;

import java.math.BigDecimal;

/** Prints a figure so that reading it again gives the same figure. */
public final class FigurePrinter {
  private FigurePrinter() {}

  /**
   * The figure with a decimal point and without thousands separators: "Typ. ≈ 48.0 +1.0/-0.5 g",
   * "-20 ~ 60 °C". What was ambiguous is printed as it was understood.
   */
  public static String print(Figure f) {
    String unit = f.unit() == null ? "" : " " + unit(f.unit());
    return words(f) + numbers(f, unit) + unit;
  }

  private static String numbers(Figure f, String unit) {
    if (f.isRange()) {
      return number(f.low()) + " ~ " + number(f.high());
    }
    if (f.low() == null) {
      return number(f.value());
    }
    // "1 mV ± 5 mV": without its own unit the 1 would be read as volts.
    boolean reachesBelowZero = f.value() > 0 && f.low() < 0;
    return number(f.value()) + (reachesBelowZero ? unit : "") + tolerance(f);
  }

  private static String words(Figure f) {
    StringBuilder out = new StringBuilder();
    if (f.qualifier() != null) {
      out.append(
          switch (f.qualifier()) {
            case MINIMUM -> "Min. ";
            case MAXIMUM -> "Max. ";
            case TYPICAL -> "Typ. ";
            case NOMINAL -> "Nom. ";
            case RATED -> "Rated ";
            case STANDARD -> "Std. ";
          });
    }
    if (f.bound() == Bound.AT_LEAST && f.qualifier() != Qualifier.MINIMUM) {
      out.append("≥ ");
    }
    if (f.bound() == Bound.AT_MOST && f.qualifier() != Qualifier.MAXIMUM) {
      out.append("≤ ");
    }
    if (f.approximate()) {
      out.append("≈ ");
    }
    return out.toString();
  }

  private static String tolerance(Figure f) {
    BigDecimal value = BigDecimal.valueOf(f.value());
    BigDecimal up = BigDecimal.valueOf(f.high()).subtract(value);
    BigDecimal down = value.subtract(BigDecimal.valueOf(f.low()));
    return up.compareTo(down) == 0 ? " ± " + number(up) : " +" + number(up) + "/-" + number(down);
  }

  private static String unit(TradeUnit unit) {
    for (UnitTable.Entry entry : UnitTable.standard().entries()) {
      if (entry.unit().equals(unit)) {
        return entry.print();
      }
    }
    return unit.ucum();
  }

  private static String number(double number) {
    return number(BigDecimal.valueOf(number));
  }

  /** Never three decimals, which could be thousands. */
  private static String number(BigDecimal number) {
    BigDecimal plain = number.stripTrailingZeros();
    if (plain.scale() < 0) {
      plain = plain.setScale(0);
    }
    return (plain.scale() == 3 ? plain.setScale(4) : plain).toPlainString();
  }
}
