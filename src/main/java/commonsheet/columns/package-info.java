/**
 * Text files of numbers in named columns, as instruments and people write them: which line names
 * the columns, what a name stands for, which unit its numbers are in, what a time is. The names are
 * data, in columns.yaml.
 */
package commonsheet.columns;
