package commonsheet.quantity;

import java.util.Objects;

/**
 * A unit as a datasheet means it.
 *
 * @param ucum UCUM code, such as {@code mA.h}; a C-rate is {@code h-1}, a count of cycles {@code
 *     1}; a month is {@code 30.d} and a year {@code 365.d}, since the trade's storage times are not
 *     calendar ones
 * @param dimension what the unit measures; units of the same dimension convert into each other,
 *     except {@link Dimension#OTHER}
 */
public record TradeUnit(String ucum, Dimension dimension) {
  public TradeUnit {
    Objects.requireNonNull(ucum);
    Objects.requireNonNull(dimension);
  }
}
