/**
 * Charts: from a plot as it is drawn to curves a record can hold. {@link
 * commonsheet.chart.ChartReader} reads one plot, {@link commonsheet.chart.SheetCharts} a sheet.
 */
package commonsheet.chart;
