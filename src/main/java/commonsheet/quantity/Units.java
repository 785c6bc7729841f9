package commonsheet.quantity;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** The units of the trade: their codes, and conversion between them. */
public final class Units {
  private static final FigureParser FIGURES = new FigureParser(NumberStyle.DECIMAL_POINT);

  private Units() {}

  /** The UCUM code of a unit as people write it, such as {@code mAh} or {@code °C}. */
  public static Optional<String> code(String spelling) {
    String one = "1 " + spelling.strip();
    List<Figure> figures = FIGURES.find(one);
    return figures.size() == 1 && isPlain(figures.get(0)) && figures.get(0).end() == one.length()
        ? Optional.of(figures.get(0).unit().ucum())
        : Optional.empty();
  }

  /** A number with its unit and nothing else: "± 1 g" and "mAh min." are no units. */
  private static boolean isPlain(Figure figure) {
    return figure.unit() != null
        && figure.start() == 0
        && figure.low() == null
        && figure.bound() == Bound.NONE
        && figure.qualifier() == null;
  }

  /**
   * A number in another unit of the same dimension. Decimal arithmetic: 2550 mA.h are 2.55 A.h
   * exactly.
   *
   * @param value a finite number
   * @param fromUcum UCUM code of its unit, such as {@code mA.h} or {@code [degF]}
   * @param toUcum UCUM code of the unit wanted
   * @throws IllegalArgumentException if a code is unknown or the two units measure different things
   */
  public static double convert(double value, String fromUcum, String toUcum) {
    return UnitTable.standard().convert(BigDecimal.valueOf(value), fromUcum, toUcum).doubleValue();
  }
}
