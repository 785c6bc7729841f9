/**
 * Rules that find in a record what a person should look at. A new rule is a class that implements
 * {@link commonsheet.check.CheckRule}, or an instance of one, and a line in {@code StandardRules}.
 */
package commonsheet.check;
