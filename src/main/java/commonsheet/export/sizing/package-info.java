/**
 * Records for tools that size batteries: flat rows of cells that can be compared, a look-up grid of
 * voltages for each cell, and cells as linked data.
 *
 * <p>{@link commonsheet.export.sizing.SizingExport} makes the files, {@link
 * commonsheet.export.sizing.ExportFolder} writes them, {@link
 * commonsheet.export.sizing.VoltageTables} reads the grids back. Every file names the sheet, says
 * who approved the record, and carries the caution.
 */
package commonsheet.export.sizing;
