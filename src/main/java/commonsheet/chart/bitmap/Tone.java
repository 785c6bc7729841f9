package commonsheet.chart.bitmap;

/**
 * How a colour differs from the ground it lies on: in lightness and in two directions of colour.
 * The measure is linear in the colour values, so that a half-covered pixel at the edge of a line
 * has half the difference, and its axes are those in which JPEG keeps colours, so that colour
 * blurred over neighbouring pixels keeps its direction. Lightness counts less, as the eye does not
 * tell curves apart by it.
 *
 * @param light difference in lightness, weighed
 * @param red difference towards red
 * @param blue difference towards blue
 */
record Tone(double light, double red, double blue) {
  /** Weight of lightness against colour. */
  static final double LIGHTNESS = 0.6;

  /** Least strength of colour, and share of the whole difference, of something not grey. */
  private static final double COLOURED = 9;

  private static final double COLOURED_SHARE = 0.22;

  static Tone between(int rgb, int ground) {
    double dr = (rgb >> 16 & 0xFF) - (ground >> 16 & 0xFF);
    double dg = (rgb >> 8 & 0xFF) - (ground >> 8 & 0xFF);
    double db = (rgb & 0xFF) - (ground & 0xFF);
    double y = 0.299 * dr + 0.587 * dg + 0.114 * db;
    return new Tone(LIGHTNESS * y, 0.713 * (dr - y), 0.564 * (db - y));
  }

  double strength() {
    return Math.sqrt(light * light + red * red + blue * blue);
  }

  double colour() {
    return Math.hypot(red, blue);
  }

  boolean isGrey() {
    return colour() < COLOURED || colour() < COLOURED_SHARE * strength();
  }

  /** Cosine of the angle between two differences: 1 for the same ink, however thin it lies. */
  double likeness(Tone other) {
    double product = light * other.light + red * other.red + blue * other.blue;
    return product / Math.max(1e-9, strength() * other.strength());
  }

  /** Angle between the hues of two coloured tones, in degrees. */
  double hueAngle(Tone other) {
    double angle = Math.abs(Math.atan2(blue, red) - Math.atan2(other.blue, other.red));
    return Math.toDegrees(Math.min(angle, 2 * Math.PI - angle));
  }

  Tone plus(Tone other, double weight) {
    return new Tone(
        light + weight * other.light, red + weight * other.red, blue + weight * other.blue);
  }

  Tone times(double factor) {
    return new Tone(light * factor, red * factor, blue * factor);
  }

  /** The colour of an ink of this tone on a ground. */
  int on(int ground) {
    double y = light / LIGHTNESS;
    double dr = y + red / 0.713;
    double db = y + blue / 0.564;
    double dg = (y - 0.299 * dr - 0.114 * db) / 0.587;
    return clamp((ground >> 16 & 0xFF) + dr) << 16
        | clamp((ground >> 8 & 0xFF) + dg) << 8
        | clamp((ground & 0xFF) + db);
  }

  private static int clamp(double value) {
    return (int) Math.max(0, Math.min(255, Math.round(value)));
  }
}
