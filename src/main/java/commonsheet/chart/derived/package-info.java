/**
 * What curves say beyond their points: capacity and energy at each load, and how well they agree
 * with what the sheet prints.
 */
package commonsheet.chart.derived;
