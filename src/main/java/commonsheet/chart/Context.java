package commonsheet.chart;

/** Which half of a cycle a caption speaks of. */
enum Context {
  CHARGE,
  DISCHARGE,
  BOTH,
  UNSAID
}
