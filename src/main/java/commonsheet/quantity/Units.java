package commonsheet.quantity;

import java.math.BigDecimal;

/** Conversion between the units of the trade. */
public final class Units {
  private Units() {}

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
