/** Curves of a record back on the page they were read from. */
package commonsheet.chart.overlay;
