/**
 * The door for programs that embed Commonsheet. Reading a sheet takes several packages, which
 * {@link commonsheet.api.DatasheetReader} puts together; everything else is reached where it is:
 * records in {@link commonsheet.record.RecordStore}, comparisons in {@link
 * commonsheet.compare.Shortlist}, exports in {@link commonsheet.export.sizing.SizingExport}.
 * docs/api.md shows a whole program.
 */
package commonsheet.api;
