package commonsheet.compare.log;

import commonsheet.columns.ColumnException;
import commonsheet.columns.ColumnFile;
import commonsheet.columns.Heading;
import java.util.List;

/**
 * Which sign a discharge has in a log: as the user says; else the sign with which nearly all charge
 * flows; else, for a column named as in the Battery Data Format, negative.
 *
 * @param why for people, a sentence
 */
record Direction(LogChoice.Sign sign, String why) {
  /**
   * Of the charge a machine draws, less than this share comes back from braking or sailing: common
   * practice, no source. A log with more of it can be one of charging.
   */
  private static final double MOST_RETURNED = 0.1;

  /** The label of the format; its name for machines tells by its unit. */
  private static final String BDF_LABEL = "Current / A";

  static Direction of(List<Run> runs, Heading column, LogChoice choice, ColumnFile file)
      throws ColumnException {
    double positive = 0;
    double negative = 0;
    for (Pieces.Piece piece : Pieces.of(runs).all()) {
      positive += Math.max(0, piece.charge());
      negative -= Math.min(0, piece.charge());
    }
    if (positive + negative == 0) {
      throw file.wrong("no current flows in column \"" + column.text() + "\"; choose another one");
    }
    if (choice.discharge() != null) {
      if ((choice.discharge() == LogChoice.Sign.POSITIVE ? positive : negative) == 0) {
        throw file.wrong("nothing is discharged with the sign that --discharge gives; change it");
      }
      return new Direction(choice.discharge(), "as given");
    }
    if (negative <= MOST_RETURNED * positive) {
      boolean bdf = isOfTheFormat(column);
      return new Direction(
          LogChoice.Sign.POSITIVE,
          bdf
              ? "since nearly all charge flows with it, although in the Battery Data Format, whose"
                  + " name the column has, it is a charge; say --discharge if that is so"
              : "since nearly all charge flows with it");
    }
    if (positive <= MOST_RETURNED * negative) {
      return new Direction(LogChoice.Sign.NEGATIVE, "since nearly all charge flows with it");
    }
    if (isOfTheFormat(column)) {
      return new Direction(LogChoice.Sign.NEGATIVE, "as in the Battery Data Format");
    }
    throw file.wrong(
        "charge flows both ways, so that it is not clear which is the discharge; say --discharge"
            + " positive or negative");
  }

  double factor() {
    return sign == LogChoice.Sign.NEGATIVE ? -1 : 1;
  }

  private static boolean isOfTheFormat(Heading column) {
    return column.text().equalsIgnoreCase(BDF_LABEL)
        || column.meaning() != null && column.meaning().fixesUnit();
  }
}
