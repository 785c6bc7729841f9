/**
 * What cells deliver at one common condition, and which of them carry a load: the builder's two
 * questions.
 *
 * <p>{@link commonsheet.compare.DischargeFamily} computes from a cell's curves, {@link
 * commonsheet.compare.CellFigures} gathers what is known of one cell, {@link
 * commonsheet.compare.Shortlist} judges and ranks many. Every {@link commonsheet.compare.Figure}
 * tells where it comes from, how far it may be off, or why there is none. Nothing is prolonged
 * beyond what a sheet shows.
 */
package commonsheet.compare;
