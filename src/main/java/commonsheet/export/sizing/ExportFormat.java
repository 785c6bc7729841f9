package commonsheet.export.sizing;

/** The forms in which cells are exported. */
public enum ExportFormat {
  /** Flat rows and look-up grids for spreadsheets. */
  CSV("csv"),
  /** The same for programs, after {@code schemas/}. */
  JSON("json"),
  /** Each cell as linked data. */
  JSON_LD("json-ld");

  private final String label;

  ExportFormat(String label) {
    this.label = label;
  }

  /** Its name in options. */
  @Override
  public String toString() {
    return label;
  }
}
