package commonsheet.export.plot;

import java.util.ArrayList;
import java.util.List;

/** Finds a place for each series' number, on its line or beside its mark, clear of the others. */
final class KeyPlaces {
  /** Radius of the ring about a number, in user units. */
  static final double RADIUS = 9;

  private static final double CLEARANCE = 2 * RADIUS + 2;

  /** How far a number moves along its line at a time. */
  private static final double STEP = 4;

  private record Place(double x, double y) {
    boolean isClearOf(Place other) {
      return Math.hypot(x - other.x, y - other.y) >= CLEARANCE;
    }
  }

  /** Where a number stands, and the end of its pointer where it had to move off its mark. */
  record Key(double x, double y, Double markX, Double markY) {}

  private final Frame frame;
  private final List<Place> taken = new ArrayList<>();

  KeyPlaces(Frame frame) {
    this.frame = frame;
  }

  /** On the line, as near to its end as there is room; at its end where there is none. */
  Key along(List<Plot.Point> line) {
    List<Place> places = places(line);
    Place end = places.get(places.size() - 1);
    Place before = end;
    double since = 0;
    for (int i = places.size() - 1; i >= 0; i--) {
      Place there = places.get(i);
      double length = Math.hypot(there.x - before.x, there.y - before.y);
      for (double along = STEP - since; along <= length; along += STEP) {
        double share = along / length;
        Place tried =
            new Place(
                before.x + share * (there.x - before.x), before.y + share * (there.y - before.y));
        if (fits(tried)) {
          return on(tried);
        }
      }
      since = (since + length) % STEP;
      before = there;
    }
    return on(end);
  }

  /** Beside a mark, on the first free side, further out where the near ones are taken. */
  Key beside(Plot.Point mark) {
    double x = frame.atX(mark.x());
    double y = frame.atY(mark.y());
    for (double far = 17; far < 80; far += 14) {
      for (int turn = 0; turn < 8; turn++) {
        double angle = Math.PI * (turn % 2 == 0 ? -turn / 8.0 : (turn + 1) / 8.0) * 2 - 0.5;
        Place tried = new Place(x + far * Math.cos(angle), y + far * Math.sin(angle));
        if (fits(tried)) {
          taken.add(tried);
          return new Key(tried.x, tried.y, x, y);
        }
      }
    }
    return new Key(x, y, null, null);
  }

  /** Keeps numbers off a mark. */
  void keepClear(Plot.Point mark) {
    taken.add(new Place(frame.atX(mark.x()), frame.atY(mark.y())));
  }

  private List<Place> places(List<Plot.Point> line) {
    return line.stream().map(p -> new Place(frame.atX(p.x()), frame.atY(p.y()))).toList();
  }

  private boolean fits(Place tried) {
    boolean inside =
        tried.x > frame.left() + RADIUS
            && tried.x < frame.right() - RADIUS
            && tried.y > frame.top() + RADIUS
            && tried.y < frame.bottom() - RADIUS;
    return inside && taken.stream().allMatch(tried::isClearOf);
  }

  private Key on(Place place) {
    taken.add(place);
    return new Key(place.x, place.y, null, null);
  }
}
