package commonsheet.chart.text;

/**
 * What an axis or a curve shows.
 *
 * @param quantity its name in records, such as {@code capacity}
 * @param unit UCUM code of the unit its points are given in
 */
public record Measure(String quantity, String unit) {}
