package commonsheet.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where on a page words may be drawn that cannot be read: pictures, and letters turned into
 * outlines.
 *
 * @param boxes the regions large enough to hold figures
 * @param drawn whether the page draws anything at all besides words
 */
record PictureRegions(List<Box> boxes, boolean drawn) {
  /** Points within which pictures are parts of one: tiles, strips of a scan. */
  private static final double TILE_GAP = 2;

  /**
   * Smallest share of the page, and smallest side in points, of a picture that counts: a table of
   * five rows of readable print needs some 60 points, a legible chart or drawing a fourteenth of
   * the page; logos and small photos stay below.
   */
  private static final double LEAST_SHARE = 0.07;

  private static final double LEAST_SIDE = 60;

  /** Side of the squares in which outlined letters are counted, in points: about a line of text. */
  private static final double SQUARE = 12;

  /**
   * Letters at least in a square of text, and their largest side in points; parts of drawings are
   * sparser.
   */
  private static final int LETTERS_PER_SQUARE = 2;

  private static final double LARGEST_LETTER = 16;

  /** Share of the page that squares with outlined letters must cover. */
  private static final double LEAST_OUTLINED = 0.03;

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
    List<Box> rows = mergeNeighbours(boxes);
    return rows.size() > MOST_PICTURES ? List.of(Box.around(rows)) : mergeAll(rows);
  }

  /** Pictures beyond which they are taken for one: a mosaic drawn in no order. */
  private static final int MOST_PICTURES = 2000;

  /** Joins each box to the one drawn before it if they touch, as the tiles of a row do. */
  private static List<Box> mergeNeighbours(List<Box> boxes) {
    List<Box> out = new ArrayList<>();
    for (Box box : boxes) {
      int last = out.size() - 1;
      if (last >= 0 && near(out.get(last), box)) {
        out.set(last, out.get(last).union(box));
      } else {
        out.add(box);
      }
    }
    return out;
  }

  private static List<Box> mergeAll(List<Box> boxes) {
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

  /** The regions of outlined letters that are large enough to be text. */
  private static List<Box> outlined(List<Box> outlines, double width, double height) {
    int columns = (int) Math.ceil(width / SQUARE) + 1;
    Map<Integer, List<Box>> squares = new HashMap<>();
    for (Box outline : outlines) {
      if (Math.max(outline.width(), outline.height()) <= LARGEST_LETTER) {
        int row = (int) (outline.centreY() / SQUARE);
        int at = row * columns + (int) (outline.centreX() / SQUARE);
        squares.computeIfAbsent(at, s -> new ArrayList<>()).add(outline);
      }
    }
    List<Box> lettered = new ArrayList<>();
    for (List<Box> letters : squares.values()) {
      if (letters.size() >= LETTERS_PER_SQUARE) {
        lettered.add(Box.around(letters));
      }
    }
    double share = lettered.size() * SQUARE * SQUARE / (width * height);
    return share >= LEAST_OUTLINED ? List.of(Box.around(lettered)) : List.of();
  }

  private static double area(Box box) {
    return box.width() * box.height();
  }

  /**
   * These regions without those that other pages have at the same place: logos, letterheads,
   * backgrounds.
   */
  PictureRegions without(List<Box> repeated) {
    List<Box> own = new ArrayList<>(boxes);
    own.removeIf(b -> repeated.stream().anyMatch(r -> isSame(b, r)));
    return new PictureRegions(own, drawn);
  }

  static boolean isSame(Box a, Box b) {
    return Math.abs(a.x() - b.x()) <= TILE_GAP
        && Math.abs(a.y() - b.y()) <= TILE_GAP
        && Math.abs(a.right() - b.right()) <= TILE_GAP
        && Math.abs(a.bottom() - b.bottom()) <= TILE_GAP;
  }

  /** What a page with so many words offers. */
  PageKind kind(int words) {
    if (words == 0) {
      return drawn ? PageKind.PICTURE : PageKind.BLANK;
    }
    return boxes.isEmpty() ? PageKind.WORDS : PageKind.PARTLY_PICTURE;
  }
}
