package commonsheet.chart.text;

/** Which half of a cycle a caption speaks of. */
public enum Context {
  CHARGE,
  DISCHARGE,
  BOTH,
  UNSAID
}
