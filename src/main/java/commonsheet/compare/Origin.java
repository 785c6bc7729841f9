package commonsheet.compare;

/** Where a figure comes from. */
public enum Origin {
  /** Stated by the sheet. */
  STATED("stated"),
  /** From one digitised curve at the very load. */
  CURVE("curve"),
  /** Between the curves of the rates, or temperatures, on either side. */
  INTERPOLATED("interpolated"),
  /** Computed from other figures of the cell or from several curves. */
  DERIVED("derived"),
  /** By a stated model from printed values, since no curve serves. */
  MODELLED("modelled"),
  /** Only a bound is known: the value has no middle, and one of its ends is open. */
  BOUNDED("bounded"),
  /** Not known; the notes say why. */
  ABSENT("absent");

  private final String label;

  Origin(String label) {
    this.label = label;
  }

  /** Its name in files. */
  public String label() {
    return label;
  }
}
