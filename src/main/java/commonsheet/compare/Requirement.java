package commonsheet.compare;

/**
 * What a machine asks of its battery: so many packs in parallel, each of {@code series} times
 * {@code parallel} cells.
 *
 * @param averageCurrent of the whole machine, in A
 * @param peakCurrent the highest sustained one of the whole machine, in A
 * @param packs in parallel
 * @param series cells in series in a pack
 * @param parallel cells in parallel in a pack
 * @param factor by which the rating must exceed the average current
 * @param massAllowance what wiring and casing add to the mass of the bare cells, as a share of it
 * @param cruiseSpeed in km/h, or null
 */
public record Requirement(
    double averageCurrent,
    double peakCurrent,
    int packs,
    int series,
    int parallel,
    double factor,
    double massAllowance,
    Double cruiseSpeed) {
  /** Twice the average current (common practice, no source; a minimum). */
  public static final double USUAL_FACTOR = 2;

  /** How many cells share the current. */
  public int sharing() {
    return packs * parallel;
  }

  /** The rating that each cell must have at least, in A: the larger of the two, shared. */
  public double ratingPerCell() {
    return Math.max(factor * averageCurrent, peakCurrent) / sharing();
  }
}
