package commonsheet.cli;

/** The statuses a command ends with; {@code docs/commands.md} tells them to users. */
final class ExitStatus {
  /** Everything asked for was done. */
  static final int DONE = 0;

  /** A fault of the program itself. */
  static final int FAULT = 1;

  /** A command, option or argument that is none. */
  static final int USAGE = 2;

  /** Some files could not be read; the others were. */
  static final int SOME_UNREADABLE = 3;

  /** No file could be read, or none was found. */
  static final int NONE_READABLE = 4;

  /** A result could not be written. */
  static final int NOT_WRITTEN = 5;

  /** The scores are below the minimum that was asked for. */
  static final int BELOW_MINIMUM = 6;

  /** An error in a record that nobody has accepted, or an approval that does not hold. */
  static final int FOUND = 7;

  private ExitStatus() {}

  /** The status of a run over several files. */
  static int of(int done, int failed) {
    if (failed == 0) {
      return done == 0 ? NONE_READABLE : DONE;
    }
    return done == 0 ? NONE_READABLE : SOME_UNREADABLE;
  }
}
