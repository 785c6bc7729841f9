package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Makes words of the characters of a page. */
final class WordBuilder {
  /**
   * Confidence of words another program recognised and hid behind a picture: it does not tell its
   * own.
   */
  static final double HIDDEN_TEXT_CONFIDENCE = 0.5;

  /** Share of the font size by which base lines of one word may differ. */
  private static final double SAME_BASE = 0.1;

  /**
   * Gap in em within which characters of different size touch, and the smallest ratio of their
   * sizes.
   */
  private static final double TOUCHING = 0.06;

  private static final double SMALL_PART = 0.5;

  /** Height of a word's box above and below its base line, in em; together the font size. */
  static final double ABOVE = 0.8;

  static final double BELOW = 0.2;

  private final Frame frame;

  WordBuilder(Frame frame) {
    this.frame = frame;
  }

  /**
   * The words of a page, in no particular order.
   *
   * @param body upright words
   * @param aside turned words, and watermarks behind the body
   */
  record Written(List<Word> body, List<Word> aside) {}

  Written build(List<Glyph> glyphs) {
    Map<Integer, List<Glyph>> byTurn = new TreeMap<>();
    for (Glyph glyph : glyphs) {
      byTurn.computeIfAbsent(frame.turnOf(glyph), t -> new ArrayList<>()).add(glyph);
    }
    List<Word> body = new ArrayList<>();
    List<Word> aside = new ArrayList<>();
    byTurn.forEach(
        (turn, turned) -> {
          Turn way = new Turn(turn);
          List<Piece> pieces = WordRepair.repair(joinOnLines(runs(turned, way)));
          Set<Piece> watermarks = watermarks(pieces);
          for (Piece piece : pieces) {
            boolean apart = turn != 0 || watermarks.contains(piece);
            (apart ? aside : body).add(word(piece, way));
          }
        });
    return new Written(body, aside);
  }

  /** Smallest size of a watermark in points, and how light its ink is at least. */
  private static final double WATERMARK_SIZE = 24;

  private static final double WATERMARK_LIGHT = 0.6;

  /** Words of a watermark at most; a page with more large light words is set in them. */
  private static final int WATERMARK_WORDS = 60;

  /** Large light letters with other words over them. */
  private static Set<Piece> watermarks(List<Piece> pieces) {
    List<Piece> large =
        pieces.stream()
            .filter(p -> p.size() >= WATERMARK_SIZE && p.light() >= WATERMARK_LIGHT)
            .toList();
    Set<Piece> found = Collections.newSetFromMap(new IdentityHashMap<>());
    if (large.size() <= WATERMARK_WORDS) {
      large.stream().filter(p -> liesUnderWords(p, pieces)).forEach(found::add);
    }
    return found;
  }

  private static boolean liesUnderWords(Piece piece, List<Piece> all) {
    double top = piece.base() - ABOVE * piece.size();
    return all.stream()
        .anyMatch(
            other ->
                other.size() < piece.size() / 2
                    && other.right() > piece.left()
                    && other.left() < piece.right()
                    && other.base() > top
                    && other.base() < piece.base());
  }

  /**
   * Whether most characters of a page stand on their side, and by how much to turn it then,
   * clockwise.
   */
  static int sideways(List<Glyph> glyphs, Frame frame) {
    int[] counts = new int[4];
    for (Glyph glyph : glyphs) {
      int turn = frame.turnOf(glyph);
      if (turn % 90 == 0 && !glyph.isSpace()) {
        counts[turn / 90]++;
      }
    }
    int all = counts[0] + counts[1] + counts[2] + counts[3];
    for (int quarter = 1; quarter < 4; quarter++) {
      if (counts[quarter] > all / 2) {
        return quarter * 90;
      }
    }
    return 0;
  }

  private List<Piece> runs(List<Glyph> glyphs, Turn turn) {
    List<Piece> runs = new ArrayList<>();
    Piece run = null;
    double spacing = 0;
    double spaceAt = Double.NaN;
    for (Glyph glyph : glyphs) {
      Piece next = piece(glyph, turn, spaceAt);
      if (glyph.isSpace()) {
        if (run != null && Math.abs(next.base() - run.base()) < run.size() / 2) {
          run = next.left() - run.right() < run.size() ? run.withGapAfter() : run;
        }
        spaceAt = next.right();
        continue;
      }
      if (run != null && belongs(run, next, spacing)) {
        run = run.join(next);
      } else {
        if (run != null) {
          runs.add(run);
        }
        run = next;
      }
      spacing = Math.max(0, glyph.spacing());
      spaceAt = Double.NaN;
    }
    if (run != null) {
      runs.add(run);
    }
    return runs;
  }

  private Piece piece(Glyph glyph, Turn turn, double spaceAt) {
    double x = frame.x(glyph.x(), glyph.y());
    double y = frame.y(glyph.x(), glyph.y());
    double left = turn.along(x, y);
    double right = left + Math.hypot(glyph.advanceX(), glyph.advanceY());
    return new Piece(
        glyph.text(),
        left,
        right,
        turn.across(x, y),
        glyph.size(),
        glyph.bold(),
        glyph.light(),
        glyph.hidden(),
        0,
        1,
        Math.abs(left - spaceAt) < glyph.size(),
        false);
  }

  private static boolean belongs(Piece run, Piece next, double spacing) {
    double em = Math.max(run.size(), next.size());
    double gap = next.left() - run.right() - Math.min(spacing, em);
    boolean space = run.gapAfter() || next.gapBefore();
    boolean smaller = !space && Math.abs(gap) <= TOUCHING * em && isSmallPart(run, next);
    return Math.abs(run.base() - next.base()) <= SAME_BASE * em
        && (run.isSameSize(next) || smaller)
        && gap >= -Spacing.OVERLAP * em
        && gap <= em * Spacing.limit(run.lastCharacter(), next.firstCharacter(), space);
  }

  /**
   * Small capitals, and the small 5 of "0.2C5A" on the base line, but no tolerance after its
   * dimension.
   */
  private static boolean isSmallPart(Piece run, Piece next) {
    double ratio = Math.min(run.size(), next.size()) / Math.max(run.size(), next.size());
    return ratio >= SMALL_PART
        && Character.isLetterOrDigit(next.firstCharacter())
        && Character.isLetter(
            run.size() > next.size() ? run.lastCharacter() : next.firstCharacter());
  }

  /** Joins runs that were drawn out of order or piece by piece. */
  private static List<Piece> joinOnLines(List<Piece> runs) {
    List<Piece> byBase = new ArrayList<>(runs);
    byBase.sort(Comparator.comparingDouble(Piece::base));
    List<Piece> joined = new ArrayList<>(runs.size());
    List<Piece> line = new ArrayList<>();
    for (Piece run : byBase) {
      if (!line.isEmpty()
          && run.base() - line.get(line.size() - 1).base() > SAME_BASE * run.size()) {
        joinLine(line, joined);
        line.clear();
      }
      line.add(run);
    }
    joinLine(line, joined);
    return joined;
  }

  private static void joinLine(List<Piece> line, List<Piece> joined) {
    line.sort(Comparator.comparingDouble(Piece::left));
    Piece word = null;
    for (Piece run : line) {
      if (word != null && belongs(word, run, 0)) {
        word = word.join(run);
      } else {
        if (word != null) {
          joined.add(word);
        }
        word = run;
      }
    }
    if (word != null) {
      joined.add(word);
    }
  }

  private static Word word(Piece piece, Turn turn) {
    Box own =
        new Box(
            piece.left(),
            piece.base() - ABOVE * piece.size(),
            Math.max(0, piece.right() - piece.left()),
            piece.size());
    return new Word(
        piece.text(),
        turn.back(own),
        piece.size(),
        piece.bold(),
        turn.degrees(),
        piece.raised(),
        piece.recognised(),
        piece.recognised() ? HIDDEN_TEXT_CONFIDENCE : 1);
  }
}
