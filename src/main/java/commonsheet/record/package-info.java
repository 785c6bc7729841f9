/**
 * The record of a cell: its types, its JSON text, its schema, and folders of records. Statements
 * carry their evidence; nothing here knows how a sheet is read.
 */
package commonsheet.record;
