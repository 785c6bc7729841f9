package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.List;

/**
 * The long straight lines of a picture, in its pixels.
 *
 * @param levels those that lie level
 * @param uprights those that stand upright
 * @param posts those that stand upright, short ones with them
 * @param unit pixels of the picture to one of the coarse picture they were found in
 */
record Lines(List<Segment> levels, List<Segment> uprights, List<Segment> posts, double unit) {
  /** Shortest upright side of a box, in pixels of the coarse picture. */
  private static final int SHORTEST_POST = 12;

  /** How far the sides of a box may miss each other where it has a shadow, in coarse pixels. */
  private static final double CORNER = 7;

  /** Side in pixels that a picture is brought to for finding its lines. */
  private static final int COARSE = 800;

  /** Shortest line, in pixels of the coarse picture. */
  private static final int SHORTEST = 40;

  /** How far apart lines may end that are meant to touch, in pixels of the coarse picture. */
  private static final double TOUCH = 3;

  static Lines of(View view, View transposed) {
    Shade shade = view.shade();
    int step = (int) Math.max(1, Math.round(Math.max(shade.width, shade.height) / (double) COARSE));
    Shade turned = transposed.shade().reduced(step);
    return new Lines(
        scaled(LineRuns.level(shade.reduced(step), SHORTEST), step),
        scaled(LineRuns.level(turned, SHORTEST), step),
        scaled(LineRuns.level(turned, SHORTEST_POST), step),
        step);
  }

  private static List<Segment> scaled(List<Segment> lines, int step) {
    return lines.stream().map(s -> s.scaled(step)).toList();
  }

  double touch() {
    return TOUCH * unit;
  }

  double shortest() {
    return SHORTEST * unit;
  }

  /**
   * Boxes that stand for themselves: four lines that end where they meet, as those around a legend
   * or a note; the cells of a grid are none, since its lines go on.
   */
  List<Area> boxes() {
    double corner = CORNER * unit;
    List<Area> out = new ArrayList<>();
    for (Segment top : levels) {
      for (Segment bottom : levels) {
        if (bottom.at() - top.at() > 2 * corner
            && Math.abs(bottom.from() - top.from()) <= corner
            && Math.abs(bottom.to() - top.to()) <= corner
            && isSided(top, bottom, corner)) {
          double reach = Math.max(top.thickness(), bottom.thickness()) / 2;
          out.add(new Area(top.from(), top.at(), top.to(), bottom.at()).grown(reach));
        }
      }
    }
    return out;
  }

  /** Whether two levels are joined on both sides; a grid line may go on from one of them. */
  private boolean isSided(Segment top, Segment bottom, double corner) {
    int left = side(top.from(), top.at(), bottom.at(), corner);
    int right = side(top.to(), top.at(), bottom.at(), corner);
    return Math.min(left, right) > 0 && Math.max(left, right) == 2;
  }

  /**
   * How an upright side of a box is drawn: 0 not at all, 1 as part of a line that goes on, 2 for
   * itself.
   */
  private int side(double x, double top, double bottom, double corner) {
    int best = 0;
    for (Segment post : posts) {
      if (Math.abs(post.at() - x) <= corner
          && post.from() <= top + corner
          && post.to() >= bottom - corner) {
        boolean own = post.from() >= top - corner && post.to() <= bottom + corner;
        best = Math.max(best, own ? 2 : 1);
      }
    }
    return best;
  }
}
