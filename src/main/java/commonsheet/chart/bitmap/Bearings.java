package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which way dots lie in their line: a dot shows no direction of its own, but the pieces before and
 * after it lie on opposite sides of it, about equally far away.
 */
final class Bearings {
  /** How far the neighbours of a dot are looked for, in line widths and pixels. */
  private static final double REACH_WIDTHS = 5;

  private static final double REACH = 8;

  /** Neighbours looked at on each dot. */
  private static final int MOST_NEIGHBOURS = 8;

  /** Sharpest bend of a line at a dot, in radians. */
  private static final double SHARPEST = 0.5;

  /** Cost of a bend by a radian, squared. */
  private static final double BEND = 8;

  private final List<Chain> pieces;
  private final int width;
  private final double reach;
  private final double lineWidth;

  Bearings(List<Chain> pieces, int width, double lineWidth) {
    this.pieces = pieces;
    this.width = width;
    this.lineWidth = lineWidth;
    this.reach = REACH_WIDTHS * lineWidth + REACH;
  }

  /** Whether a piece is too short to show its direction. */
  boolean isDot(Chain piece) {
    int[] pixels = piece.pixels();
    int last = pixels[pixels.length - 1];
    double dx = pixels[0] % width - last % width;
    double dy = pixels[0] / width - last / width;
    return isDot(Math.hypot(dx, dy), lineWidth);
  }

  /**
   * Whether a piece of some length is too short to show its direction: the dots of a thick dotted
   * line are bars that stand across it.
   */
  static boolean isDot(double length, double lineWidth) {
    return length < Math.max(4, 1.6 * lineWidth + 1);
  }

  /** For each piece that is a dot the angle of its line, in radians; otherwise not a number. */
  double[] angles() {
    double[] angles = new double[pieces.size()];
    for (int piece = 0; piece < angles.length; piece++) {
      angles[piece] = isDot(pieces.get(piece)) ? angle(piece) : Double.NaN;
    }
    return angles;
  }

  private double angle(int piece) {
    int[] own = pieces.get(piece).pixels();
    int middle = own[own.length / 2];
    double x = middle % width;
    double y = middle / width;
    List<double[]> near = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      if (i != piece) {
        double[] to = nearest(pieces.get(i), x, y);
        if (to[2] <= reach) {
          near.add(to);
        }
      }
    }
    near.sort(Comparator.comparingDouble(n -> n[2]));
    if (near.size() > MOST_NEIGHBOURS) {
      near = near.subList(0, MOST_NEIGHBOURS);
    }
    double best = Double.MAX_VALUE;
    double angle = Double.NaN;
    for (int i = 0; i < near.size(); i++) {
      for (int k = i + 1; k < near.size(); k++) {
        double[] a = near.get(i);
        double[] b = near.get(k);
        double cosine = -(a[0] * b[0] + a[1] * b[1]) / Math.max(1e-9, a[2] * b[2]);
        double bend = Math.acos(Math.max(-1, Math.min(1, cosine)));
        if (bend <= SHARPEST) {
          double cost = (a[2] + b[2]) * (1 + BEND * bend * bend) + Math.abs(a[2] - b[2]);
          if (cost < best) {
            best = cost;
            angle = Math.atan2(b[1] - a[1], b[0] - a[0]);
          }
        }
      }
    }
    return angle;
  }

  /** The way from a place to the nearer end of a piece: across, down, distance. */
  private double[] nearest(Chain piece, double x, double y) {
    int[] pixels = piece.pixels();
    double[] first = way(pixels[0], x, y);
    double[] last = way(pixels[pixels.length - 1], x, y);
    return first[2] <= last[2] ? first : last;
  }

  private double[] way(int pixel, double x, double y) {
    double dx = pixel % width - x;
    double dy = pixel / width - y;
    return new double[] {dx, dy, Math.hypot(dx, dy)};
  }
}
