package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.List;

/** Parts a field into its inks: each pixel goes to the ink that explains its colour best. */
final class Layers {
  /** Strength below which a pixel is ground. */
  private static final double FAINT = 9;

  /** How far a pixel's colour may be from that of its ink: a fixed part for noise and a share. */
  private static final double NOISE = 14;

  private static final double SHARE = 0.35;

  /** Pixels at the rim of a field that the sides of the plot take. */
  private static final int RIM = 6;

  private Layers() {}

  static List<Layer> of(Field field, boolean[] ruled, boolean[] hidden, List<Tone> inks) {
    int size = field.size();
    byte[] owner = new byte[size];
    float[] amount = new float[size];
    for (int i = 0; i < size; i++) {
      owner[i] = -1;
      if (!ruled[i] && field.strength[i] > FAINT) {
        assign(field, i, inks, owner, amount);
      }
    }
    List<Layer> layers = new ArrayList<>();
    for (int k = 0; k < inks.size(); k++) {
      float[] share = new float[size];
      boolean[] covered = new boolean[size];
      for (int i = 0; i < size; i++) {
        if (owner[i] == k) {
          share[i] = amount[i];
        } else {
          covered[i] = hidden[i] || field.strength[i] > Palette.INK && !isRim(field, i);
        }
      }
      layers.add(new Layer(inks.get(k), field.width, field.height, share, covered));
    }
    return layers;
  }

  /** The sides of the plot cover nothing: no curve goes along under them. */
  private static boolean isRim(Field field, int i) {
    int x = i % field.width;
    int y = i / field.width;
    return Math.min(x, y) < RIM || x >= field.width - RIM || y >= field.height - RIM;
  }

  private static void assign(Field field, int i, List<Tone> inks, byte[] owner, float[] amount) {
    double best = NOISE + SHARE * field.strength[i];
    double light = field.light[i];
    double red = field.red[i];
    double blue = field.blue[i];
    for (int k = 0; k < inks.size(); k++) {
      Tone ink = inks.get(k);
      double square = ink.light() * ink.light() + ink.red() * ink.red() + ink.blue() * ink.blue();
      double share = (light * ink.light() + red * ink.red() + blue * ink.blue()) / square;
      if (share <= 0) {
        continue;
      }
      double y = light - share * ink.light();
      double r = red - share * ink.red();
      double b = blue - share * ink.blue();
      double rest = Math.sqrt(y * y + r * r + b * b);
      if (rest < best) {
        best = rest;
        owner[i] = (byte) k;
        amount[i] = (float) share;
      }
    }
  }
}
