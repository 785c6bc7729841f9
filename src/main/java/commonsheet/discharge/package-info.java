/**
 * The discharge of a cell at one load, as a chart shows it: what is needed both for the figures
 * that curves give by themselves and for cells at a common condition.
 *
 * <p>{@link commonsheet.discharge.DischargeCurve} is a curve of a record down to a {@link
 * commonsheet.discharge.CutOff}; its capacity and energy are {@link commonsheet.discharge.Estimate}
 * values with bounds.
 */
package commonsheet.discharge;
