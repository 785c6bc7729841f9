package commonsheet.cli;

/** Names a fault in a few words, for sentences to the person at the terminal. */
final class FaultText {
  private FaultText() {}

  /** The kind of fault, and its message where it has one, on one line. */
  static String of(Throwable fault) {
    if (fault instanceof OutOfMemoryError) {
      return "out of memory";
    }
    if (fault instanceof StackOverflowError) {
      return "too deeply nested";
    }
    String message = fault.getMessage();
    String kind = fault.getClass().getSimpleName();
    return message == null || message.isBlank()
        ? kind
        : kind + ": " + message.strip().replaceAll("\\s+", " ");
  }
}
