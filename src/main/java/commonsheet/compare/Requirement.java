package commonsheet.compare;

import commonsheet.quantity.PlainNumber;

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
 * @param cruiseSpeed in km/h, or null where no distance is wanted
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

  private static final int DIGITS = 6;

  /** More than any pack of cells that datasheets are about, in A and in cells. */
  private static final int MOST = 100_000;

  public Requirement {
    require(
        averageCurrent > 0 && averageCurrent <= MOST,
        "the average current must be above 0 A and at most 100000 A, not ",
        averageCurrent);
    require(
        peakCurrent >= averageCurrent && peakCurrent <= MOST,
        "the peak current must not be below the average current nor above 100000 A, and is ",
        peakCurrent);
    require(packs >= 1 && packs <= MOST, "there must be 1 pack or more, not ", packs);
    require(series >= 1 && series <= MOST, "there must be 1 cell in series or more, not ", series);
    require(
        parallel >= 1 && parallel <= MOST,
        "there must be 1 cell in parallel or more, not ",
        parallel);
    require(
        factor >= 1 && factor <= MOST,
        "the factor must be 1 or more, since a rating below the average carries nothing, not ",
        factor);
    require(
        massAllowance >= 0 && massAllowance <= MOST,
        "the allowance for wiring and casing must not be below 0, and is ",
        massAllowance);
    require(
        cruiseSpeed == null || cruiseSpeed > 0 && cruiseSpeed <= MOST,
        "the cruise speed must be above 0 km/h, not ",
        cruiseSpeed == null ? 0 : cruiseSpeed);
  }

  private static void require(boolean met, String sentence, double found) {
    if (!met) {
      throw new IllegalArgumentException(sentence + PlainNumber.of(found, DIGITS));
    }
  }

  /** How many cells share the current. */
  public int sharing() {
    return packs * parallel;
  }

  /** The rating that each cell must have at least, in A: the larger of the two, shared. */
  public double ratingPerCell() {
    return Math.max(factor * averageCurrent, peakCurrent) / sharing();
  }
}
