package commonsheet.score;

/**
 * What became of one thing the sheet says about which cell it describes.
 *
 * @param kind RIGHT, WRONG or MISSED
 * @param expected what the sheet says
 * @param read what the record says, or null
 */
public record FieldOutcome(Outcome.Kind kind, TruthField expected, String read) {}
