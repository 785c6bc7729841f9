/**
 * The commands: each parses its arguments, calls the other packages, prints and ends with a status.
 */
package commonsheet.cli;
