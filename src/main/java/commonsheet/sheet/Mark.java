package commonsheet.sheet;

/**
 * A box with a label, to be drawn on the picture of a page.
 *
 * @param box in points from the top left of the page as displayed
 * @param label written at its upper left corner; empty for none
 */
public record Mark(Box box, String label, Tone tone) {
  /**
   * What a mark stands for, each in a colour that can be told from the others by colour-blind
   * readers.
   */
  public enum Tone {
    /** Read and trusted: bluish green. */
    READ(0x009E73),
    /** Read but unsure: orange. */
    UNSURE(0xE69F00),
    /** Seen and not understood: vermilion. */
    UNMATCHED(0xD55E00),
    /** Structure found on the page, such as a table's cells: blue. */
    STRUCTURE(0x0072B2),
    /** Left aside, such as a running header: grey. */
    ASIDE(0x777777);

    // Colours of M. Okabe and K. Ito, "Color Universal Design", 2002 (from memory), grey added.
    private final int rgb;

    Tone(int rgb) {
      this.rgb = rgb;
    }

    /** The colour as 0xRRGGBB. */
    public int rgb() {
      return rgb;
    }
  }
}
