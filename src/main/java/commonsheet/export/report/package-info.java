/**
 * A shortlist as files: CSV, JSON, Markdown, a workbook, a page of HTML, a data package, and its
 * charts as SVG.
 *
 * <p>{@link commonsheet.export.report.Report} gathers what is shown, {@link
 * commonsheet.export.report.ReportFormat} names the forms, and a writer per form decides how it
 * looks. Every form carries the condition, the sources, the state of approval and {@link
 * commonsheet.export.Caution#TEXT}.
 */
package commonsheet.export.report;
