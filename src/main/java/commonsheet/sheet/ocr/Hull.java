package commonsheet.sheet.ocr;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Convex hull of corners, by Andrew's monotone chain, and the smallest box around it. */
final class Hull {
  private final List<Corner> corners;

  private Hull(List<Corner> corners) {
    this.corners = corners;
  }

  /** A place in a picture, in pixels. */
  record Corner(double x, double y) {}

  static Hull of(List<Corner> all) {
    List<Corner> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparingDouble(Corner::x).thenComparingDouble(Corner::y));
    List<Corner> hull = half(sorted);
    List<Corner> back = new ArrayList<>(sorted);
    java.util.Collections.reverse(back);
    hull.addAll(half(back));
    return new Hull(hull);
  }

  private static List<Corner> half(List<Corner> sorted) {
    List<Corner> chain = new ArrayList<>();
    for (Corner next : sorted) {
      while (chain.size() > 1
          && cross(chain.get(chain.size() - 2), chain.get(chain.size() - 1), next) <= 0) {
        chain.remove(chain.size() - 1);
      }
      chain.add(next);
    }
    chain.remove(chain.size() - 1);
    return chain;
  }

  private static double cross(Corner from, Corner over, Corner to) {
    return (over.x - from.x) * (to.y - from.y) - (over.y - from.y) * (to.x - from.x);
  }

  /** The box around it with sides along the picture's. */
  TurnedBox levelBox() {
    return box(0);
  }

  /**
   * The box of least area; one of its sides lies on a side of the hull. Its angle is within 45
   * degrees of level.
   */
  TurnedBox smallestBox() {
    TurnedBox smallest = levelBox();
    for (int i = 0; i < corners.size(); i++) {
      Corner from = corners.get(i);
      Corner to = corners.get((i + 1) % corners.size());
      double side = Math.atan2(to.y - from.y, to.x - from.x);
      double quarter = Math.PI / 2;
      TurnedBox box = box(side - quarter * Math.rint(side / quarter));
      if (box.area() < smallest.area()) {
        smallest = box;
      }
    }
    return smallest;
  }

  private TurnedBox box(double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    double left = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    for (Corner corner : corners) {
      double along = corner.x * cos + corner.y * sin;
      double down = -corner.x * sin + corner.y * cos;
      left = Math.min(left, along);
      right = Math.max(right, along);
      top = Math.min(top, down);
      bottom = Math.max(bottom, down);
    }
    double along = (left + right) / 2;
    double down = (top + bottom) / 2;
    return new TurnedBox(
        along * cos - down * sin, along * sin + down * cos, right - left, bottom - top, angle);
  }
}
