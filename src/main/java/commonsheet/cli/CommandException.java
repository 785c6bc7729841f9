package commonsheet.cli;

/** Ends a command with a status and one sentence for the person at the terminal. */
final class CommandException extends Exception {
  private static final long serialVersionUID = 1L;

  private final int status;

  CommandException(int status, String message) {
    super(message);
    this.status = status;
  }

  int status() {
    return status;
  }
}
