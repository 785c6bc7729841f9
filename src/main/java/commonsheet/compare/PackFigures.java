package commonsheet.compare;

/**
 * All packs of a machine together, built of one cell.
 *
 * @param nominalCapacity A.h, printed capacity times cells in parallel
 * @param nominalEnergy W.h, printed capacity times nominal voltage times all cells
 * @param deliveredCapacity A.h, under the load, less the reserve
 * @param deliveredEnergy W.h, under the load, less the reserve
 * @param cellMass kg, bare cells
 * @param mass kg, with the allowance for wiring and casing
 * @param lowVoltage V, cut-off times cells in series
 * @param highVoltage V, charge voltage times cells in series
 * @param shareOfRatingAtAverage 1, average current over what the cells are rated for
 * @param shareOfRatingAtPeak 1, peak current over what the cells are rated for
 * @param time h, at the average current, to the reserve
 * @param distance km, at the cruise speed in that time
 */
public record PackFigures(
    Figure nominalCapacity,
    Figure nominalEnergy,
    Figure deliveredCapacity,
    Figure deliveredEnergy,
    Figure cellMass,
    Figure mass,
    Figure lowVoltage,
    Figure highVoltage,
    Figure shareOfRatingAtAverage,
    Figure shareOfRatingAtPeak,
    Figure time,
    Figure distance) {}
