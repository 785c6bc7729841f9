/**
 * Charts as SVG 1.1, each whole in itself: title and description, axes with units, a legend, and
 * for every series a colour, a dash, a marker and a number, so that series can be told apart
 * without colour. {@link commonsheet.export.plot.Plot} says what is shown, {@link
 * commonsheet.export.plot.PlotSvg} draws it.
 */
package commonsheet.export.plot;
