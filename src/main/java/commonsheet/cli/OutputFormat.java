package commonsheet.cli;

/** How a command prints its result. */
enum OutputFormat {
  /** For people. */
  TEXT,
  /** For scripts. */
  JSON;

  @Override
  public String toString() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
