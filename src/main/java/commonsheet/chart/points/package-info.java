/** Curves from files of the user's: points placed by hand on a chart, and measured logs. */
package commonsheet.chart.points;
