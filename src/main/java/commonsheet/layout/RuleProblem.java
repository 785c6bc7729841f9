package commonsheet.layout;

/**
 * Something wrong in a rule file.
 *
 * @param line from 1
 * @param sentence what it is and what to do, without a full stop
 */
record RuleProblem(int line, String sentence) {}
