/**
 * How well records agree with what a careful person read on the same sheets.
 *
 * <p>A {@link commonsheet.score.Truth} is that person's reading, kept as a CSV file beside the
 * sheet. {@link commonsheet.score.Scorer} pairs its rows with a record's statements, and {@link
 * commonsheet.score.ScoreReport} prints what is right, wrong, missed and spurious.
 */
package commonsheet.score;
