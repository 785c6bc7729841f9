/**
 * Between places on a page and values of the axes, by marks whose place and value are known; and
 * curves made from places.
 */
package commonsheet.chart.reference;
