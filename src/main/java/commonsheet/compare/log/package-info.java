/**
 * The load of a machine from a log of its current: {@link commonsheet.compare.log.LoadLog} reads
 * one, {@link commonsheet.compare.log.LoadFile} keeps what was found for a comparison.
 */
package commonsheet.compare.log;
