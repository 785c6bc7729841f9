package commonsheet.layout;

import java.util.Locale;

/** What a table's column holds, as its heading says. */
enum Role {
  NUMBER,
  LABEL,
  SYMBOL,
  VALUE,
  MINIMUM,
  TYPICAL,
  NOMINAL,
  RATED,
  MAXIMUM,
  UNIT,
  CONDITION,
  REMARK,
  /** A column for one of several models. */
  MODEL,
  /** A heading that is itself a condition of the values below it: a temperature, a time, a rate. */
  STATED,
  /** A column about something else than the cell, such as a pack built of it. */
  OTHER,
  /** No heading, or one that says nothing known. */
  UNKNOWN;

  static Role named(String name) {
    return valueOf(name.toUpperCase(Locale.ROOT));
  }

  boolean holdsValues() {
    return switch (this) {
      case VALUE, MINIMUM, TYPICAL, NOMINAL, RATED, MAXIMUM, MODEL, STATED -> true;
      default -> false;
    };
  }

  boolean holdsConditions() {
    return this == CONDITION || this == REMARK;
  }
}
