package commonsheet.export.plot;

/**
 * What tells one series from the others. Colours are those of M. Okabe and K. Ito, "Color Universal
 * Design" (2008), which people with any usual kind of colour vision can tell apart; the pale ones
 * are darkened to stand out from white. Dash and marker tell the same without colour.
 */
public enum Look {
  FIRST("#0072b2", null, "M-4.2,0a4.2,4.2 0 1,0 8.4,0a4.2,4.2 0 1,0 -8.4,0Z"),
  SECOND("#d55e00", "9 4", "M-3.8,-3.8h7.6v7.6h-7.6Z"),
  THIRD("#00805c", "2.5 3", "M0,-5L4.6,3.6H-4.6Z"),
  FOURTH("#b4578f", "11 3 2.5 3", "M0,-5.2L5.2,0L0,5.2L-5.2,0Z"),
  FIFTH("#a66f00", "5 2.5", "M0,5L4.6,-3.6H-4.6Z"),
  SIXTH("#2f86bd", "14 4", "M-4.2,-4.2L4.2,4.2M4.2,-4.2L-4.2,4.2"),
  SEVENTH("#333333", "6 3 2 3 2 3", "M0,-5V5M-5,0H5"),
  EIGHTH("#7a6a00", "1.5 2.5", "M-5,-2h10v4h-10Z");

  private final String colour;
  private final String dash;
  private final String marker;

  Look(String colour, String dash, String marker) {
    this.colour = colour;
    this.dash = dash;
    this.marker = marker;
  }

  /** Name of its class in style sheets. */
  public String styleClass() {
    return "series-" + (ordinal() + 1);
  }

  String colour() {
    return colour;
  }

  String dash() {
    return dash;
  }

  /** A path about the origin. */
  String marker() {
    return marker;
  }
}
