/**
 * What persons do with a record: confirm, correct, return, accept, approve; whether an approval
 * holds; how two records differ. Each is a change from one record to another; {@link
 * commonsheet.review.RecordDesk} carries it to the file.
 */
package commonsheet.review;
