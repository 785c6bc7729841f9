package commonsheet.compare;

/** Whether a cell carries the current that is asked of it. The order is that of a shortlist. */
public enum Verdict {
  CARRIES("carries"),
  /** Its rating is below what is asked by little. */
  NEAR_MISS("near miss"),
  /** The sheet gives no rating, or gives contradicting ones. */
  NOT_KNOWN("not known"),
  FAILS("fails");

  private final String label;

  Verdict(String label) {
    this.label = label;
  }

  /** Its name in files and for people. */
  public String label() {
    return label;
  }
}
