/**
 * Records in forms for other programs and for people: a plain comparison of several cells as CSV,
 * as Markdown and as text for the terminal.
 *
 * <p>{@link commonsheet.export.ComparisonTable} decides what is compared; the writers only decide
 * how it looks. Every output carries {@link commonsheet.export.Caution#TEXT}.
 */
package commonsheet.export;
