package commonsheet.compare;

/**
 * The voltage under a load between two others: at equal charge it lies between theirs by the share
 * that the current lies between their currents, as Ohm's law has it for a cell of one resistance.
 * Past the end of the shorter discharge the gap between the two is held as it was there.
 */
final class ProfileBetween implements Profile {
  private final Profile shorter;
  private final Profile longer;

  /** How much of the shorter one there is in it, 0 to 1. */
  private final double share;

  private final double heldGap;
  private final double end;

  /**
   * Between two discharges that end at one cut-off.
   *
   * @param share of the second, 0 to 1
   */
  ProfileBetween(Profile one, Profile two, double share) {
    boolean secondShorter = two.end() <= one.end();
    this.shorter = secondShorter ? two : one;
    this.longer = secondShorter ? one : two;
    this.share = secondShorter ? share : 1 - share;
    double there = longer.voltageAt(shorter.end());
    this.heldGap = there - shorter.voltageAt(shorter.end());
    double level = this.share * there + (1 - this.share) * longer.voltageAt(longer.end());
    this.end = longer.chargeAt(level, shorter.end());
  }

  @Override
  public double end() {
    return end;
  }

  @Override
  public double voltageAt(double charge) {
    double above = longer.voltageAt(charge);
    return charge <= shorter.end()
        ? above + share * (shorter.voltageAt(charge) - above)
        : above - share * heldGap;
  }

  @Override
  public double energyTo(double charge) {
    double common = Math.min(charge, shorter.end());
    return longer.energyTo(charge)
        + share * (shorter.energyTo(common) - longer.energyTo(common))
        - share * heldGap * (charge - common);
  }
}
