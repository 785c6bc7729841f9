package commonsheet.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Where on a page words may be drawn that cannot be read: pictures, and letters turned into outlines.
 *
 * @param boxes the regions large enough to hold figures
 * @param drawn whether the page draws anything at all besides words
 */
record PictureRegions(List<Box> boxes, boolean drawn) {
  /** Points within which pictures are parts of one: tiles, strips of a scan. */
  private static final double TILE_GAP = 2;

  /**
   * Smallest share of the page, and smallest side in points, of a picture that counts: a table of five rows of
   * readable print needs some 60 points; logos and small photos stay below.
   */
  private static final double LEAST_SHARE = 0.06;

  private static final double LEAST_SIDE = 60;

  /** Side of the squares in which outlined letters are counted, in points: about a line of text. */
  private static final double SQUARE = 12;

  /** Outlined letters from which on they are text: some two lines. */
  private static final int LEAST_OUTLINES = 120;

  /** Share of the page that squares with outlined letters must cover. */
  private static final double LEAST_OUTLINED = 0.03;

  /** Share of the page that pictures must cover to hide much. */
  private static final double APPRECIABLE = 0.12;

  /** Words up to which a page that is one picture has nothing but a stamp or page number written over it. */
  private static final int STAMP_WORDS = 12;

  private static final double WHOLE_PAGE = 0.7;

  static PictureRegions of(
      List<Box> images, List<Box> outlines, boolean drawn, double width, double height) {
    List<Box> found = new ArrayList<>();
    for (Box picture : merge(images)) {
      if (area(picture) >= LEAST_SHARE * width * height
          && Math.min(picture.width(), picture.height()) >= LEAST_SIDE) {
        found.add(picture);
      }
    }
    found.addAll(outlined(outlines, width, height));
    return new PictureRegions(found, drawn || !images.isEmpty() || !outlines.isEmpty());
  }

  /** Joins boxes that overlap or nearly touch, so that a picture cut into tiles counts once. */
  static List<Box> merge(List<Box> boxes) {
    List<Box> out = new ArrayList<>();
    for (Box box : boxes) {
      Box grown = box;
      boolean again = true;
      while (again) {
        Box now = grown;
        List<Box> touching = out.stream().filter(o -> near(o, now)).toList();
        again = !touching.isEmpty();
        out.removeAll(touching);
        for (Box other : touching) {
          grown = grown.union(other);
        }
      }
      out.add(grown);
    }
    return out;
  }

  private static boolean near(Box a, Box b) {
    return a.x() <= b.right() + TILE_GAP
        && b.x() <= a.right() + TILE_GAP
        && a.y() <= b.bottom() + TILE_GAP
        && b.y() <= a.bottom() + TILE_GAP;
  }

  /** The region of outlined letters, if there are enough of them to be text. */
  private static List<Box> outlined(List<Box> outlines, double width, double height) {
    if (outlines.size() < LEAST_OUTLINES) {
      return List.of();
    }
    int columns = (int) Math.ceil(width / SQUARE);
    boolean[] squares = new boolean[columns * (int) Math.ceil(height / SQUARE) + columns];
    List<Box> letters = new ArrayList<>();
    for (Box outline : outlines) {
      int at =
          (int) (clamp(outline.centreY(), height) / SQUARE) * columns
              + (int) (clamp(outline.centreX(), width) / SQUARE);
      if (!squares[at]) {
        squares[at] = true;
        letters.add(outline);
      }
    }
    double share = letters.size() * SQUARE * SQUARE / (width * height);
    return share >= LEAST_OUTLINED ? List.of(Box.around(letters)) : List.of();
  }

  private static double clamp(double value, double most) {
    return Math.max(0, Math.min(value, most - 1));
  }

  private static double area(Box box) {
    return box.width() * box.height();
  }

  /** What the page offers, given how many words are written on it. */
  PageKind kind(int words, double width, double height) {
    if (words == 0) {
      return drawn ? PageKind.PICTURE : PageKind.BLANK;
    }
    double share = boxes.stream().mapToDouble(PictureRegions::area).sum() / (width * height);
    return share >= APPRECIABLE ? PageKind.PARTLY_PICTURE : PageKind.WORDS;
  }
}
