package commonsheet.score;

import commonsheet.record.Conditions;
import commonsheet.record.Statistic;

/**
 * One statement that the sheet makes, as a careful person reads it.
 *
 * @param quantity name of the quantity, such as {@code capacity}
 * @param statistic as the sheet says it, or null
 * @param value in the quantity's canonical unit; null where the sheet gives only a range
 * @param low lower bound of a range or tolerance, in the same unit, or null
 * @param high upper bound of a range or tolerance, in the same unit, or null
 * @param unit UCUM code of the canonical unit
 * @param conditions what the sheet states for this statement, and nothing else
 * @param page page of the sheet, from 1
 * @param text the words on the sheet
 */
public record TruthRow(
    String quantity,
    Statistic statistic,
    Double value,
    Double low,
    Double high,
    String unit,
    Conditions conditions,
    Integer page,
    String text) {}
