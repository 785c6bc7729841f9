package commonsheet.chart.text;

import commonsheet.quantity.TradeUnit;

/**
 * What an axis shows and the unit its numbers are printed in.
 *
 * @param unit null where none is printed
 */
public record AxisMeasure(Measure measure, TradeUnit unit) {}
