package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Repairs words once all of one direction are known: letters pulled apart, superscripts and
 * subscripts, degree signs made of a raised letter o.
 */
final class WordRepair {
  /**
   * Superscripts and subscripts are at most this share of their neighbour's size (usually 0.58 to
   * 0.7).
   */
  private static final double SCRIPT_SIZE = 0.86;

  /** How far from its neighbour a script may stand, in em of the neighbour. */
  private static final double SCRIPT_GAP = 0.3;

  /**
   * How far the base line of a superscript lies above, of a subscript below its neighbour's, in em.
   */
  private static final double LEAST_RISE = 0.12;

  private static final double MOST_RISE = 0.8;
  private static final double LEAST_DROP = 0.06;
  private static final double MOST_DROP = 0.5;

  /** Letters at least in a row before they count as one word pulled apart. */
  private static final int SPREAD_LETTERS = 4;

  /** Widest gap between letters of a word pulled apart, in em. */
  private static final double SPREAD_GAP = 0.65;

  private static final String DEGREE_LOOKALIKES = "oO0\u25E6\u2218\u00B0\u00BA\u02DA";

  private WordRepair() {}

  static List<Piece> repair(List<Piece> pieces) {
    List<Piece> sorted = new ArrayList<>(joinSpread(pieces));
    sorted.sort(Comparator.comparingDouble(Piece::left));
    List<Piece> marked = new ArrayList<>(sorted.size());
    for (int i = 0; i < sorted.size(); i++) {
      marked.add(mark(sorted, i));
    }
    return joinScripts(joinSigns(marked));
  }

  /**
   * How far a sign may stand before its number, and how far a number before it makes it an
   * operator, in em.
   */
  private static final double SIGN_GAP = 0.4;

  private static final double OPERAND_GAP = 1;

  private static final String SIGNS = "+-\u2212\u00B1";

  /**
   * Joins a sign set loosely before its number, as drawings have them, unless it stands between two
   * numbers. With a space drawn after it, it may be the dash of a list, unless it is the sign of a
   * raised or lowered tolerance.
   */
  private static List<Piece> joinSigns(List<Piece> sorted) {
    List<Piece> out = new ArrayList<>(sorted);
    for (int i = 0; i < out.size(); i++) {
      Piece sign = out.get(i);
      boolean loose = sign.gapAfter() && sign.raised() == 0;
      if (sign.text().length() == 1 && SIGNS.contains(sign.text()) && !loose) {
        int number = beside(out, i, SIGN_GAP, 1);
        if (number >= 0
            && Character.isDigit(out.get(number).firstCharacter())
            && beside(out, i, OPERAND_GAP, -1) < 0) {
          out.set(i, sign.join(out.get(number)));
          out.remove(number);
        }
      }
    }
    return out;
  }

  /**
   * The piece of the same size on the same line within a gap to the right (1) or left (-1), or -1.
   */
  private static int beside(List<Piece> sorted, int at, double within, int way) {
    Piece piece = sorted.get(at);
    for (int i = at + way;
        i >= 0 && i < sorted.size() && Math.abs(i - at) <= NEIGHBOURS;
        i += way) {
      Piece other = sorted.get(i);
      double gap = way > 0 ? other.left() - piece.right() : piece.left() - other.right();
      boolean onLine = Math.abs(other.base() - piece.base()) <= 0.12 * piece.size();
      if (onLine
          && piece.isSameSize(other)
          && gap >= -0.1 * piece.size()
          && gap <= within * piece.size()) {
        return i;
      }
    }
    return -1;
  }

  /**
   * Joins letters set apart evenly, as in "S P E C I F I C A T I O N"; pieces come line by line.
   */
  private static List<Piece> joinSpread(List<Piece> pieces) {
    List<Piece> out = new ArrayList<>(pieces.size());
    int i = 0;
    while (i < pieces.size()) {
      int end = i + 1;
      double least = Double.MAX_VALUE;
      double most = 0;
      while (end < pieces.size() && isSpread(pieces.get(end - 1), pieces.get(end))) {
        double gap = pieces.get(end).left() - pieces.get(end - 1).right();
        if (Math.max(most, gap) - Math.min(least, gap) > 0.2 * pieces.get(end).size()) {
          break;
        }
        least = Math.min(least, gap);
        most = Math.max(most, gap);
        end++;
      }
      if (end - i >= SPREAD_LETTERS) {
        out.add(pieces.subList(i, end).stream().reduce(Piece::join).orElseThrow());
      } else {
        out.addAll(pieces.subList(i, end));
      }
      i = end;
    }
    return out;
  }

  private static boolean isSpread(Piece before, Piece after) {
    double gap = after.left() - before.right();
    return before.glyphs() == 1
        && after.glyphs() == 1
        && Character.isLetter(before.firstCharacter())
        && Character.isLetter(after.firstCharacter())
        && before.isSameSize(after)
        && Math.abs(before.base() - after.base()) < 0.1 * before.size()
        && gap > 0
        && gap < SPREAD_GAP * before.size();
  }

  private static Piece mark(List<Piece> sorted, int at) {
    Piece piece = sorted.get(at);
    for (int i = at - 1; i >= 0 && i >= at - NEIGHBOURS; i--) {
      int raised = raised(piece, sorted.get(i), piece.left() - sorted.get(i).right());
      if (raised != 0) {
        return piece.withRaised(raised);
      }
    }
    for (int i = at + 1; i < sorted.size() && i <= at + NEIGHBOURS; i++) {
      int raised = raised(piece, sorted.get(i), sorted.get(i).left() - piece.right());
      if (raised != 0) {
        return piece.withRaised(raised);
      }
    }
    return piece;
  }

  private static final int NEIGHBOURS = 400;

  private static int raised(Piece piece, Piece neighbour, double gap) {
    double em = neighbour.size();
    if (piece.size() > SCRIPT_SIZE * em || Math.abs(gap) > SCRIPT_GAP * em) {
      return 0;
    }
    double rise = (neighbour.base() - piece.base()) / em;
    if (rise >= LEAST_RISE && rise <= MOST_RISE) {
      return 1;
    }
    return -rise >= LEAST_DROP && -rise <= MOST_DROP ? -1 : 0;
  }

  /** Puts degree signs and touching subscripts into the words they belong to. */
  private static List<Piece> joinScripts(List<Piece> sorted) {
    List<Piece> out = new ArrayList<>(sorted);
    for (int i = 0; i < out.size(); i++) {
      Piece script = out.get(i);
      int next = follower(out, i);
      if (isDegree(script) && next >= 0 && isTemperature(out.get(next))) {
        Piece sign = script.withText("\u00B0").withRaised(0);
        Piece whole = level(sign.join(out.get(next)), out.get(next));
        out.set(i, whole);
        out.remove(next);
        int before = predecessor(out, i);
        if (before >= 0) {
          out.set(before, out.get(before).join(whole));
          out.remove(i);
          i--;
        }
      } else if (isSubscript(script)) {
        int before = predecessor(out, i);
        if (before >= 0 && Character.isLetter(out.get(before).lastCharacter())) {
          Piece whole = out.get(before).join(script);
          boolean goesOn =
              next >= 0
                  && out.get(next).raised() == 0
                  && (touches(script, out.get(next), false)
                      || out.get(next).text().startsWith("A"));
          out.set(before, goesOn ? whole.join(out.get(next)) : whole);
          if (goesOn) {
            out.remove(next);
          }
          out.remove(i);
          i--;
        }
      }
    }
    return out;
  }

  private static boolean isDegree(Piece piece) {
    boolean round = piece.text().length() == 1 && DEGREE_LOOKALIKES.contains(piece.text());
    return round && (piece.raised() == 1 || !Character.isLetterOrDigit(piece.firstCharacter()));
  }

  private static boolean isTemperature(Piece piece) {
    boolean alone = piece.text().length() == 1 || !Character.isLetter(piece.text().codePointAt(1));
    return (piece.text().startsWith("C") || piece.text().startsWith("F")) && alone;
  }

  private static boolean isSubscript(Piece piece) {
    return piece.raised() == -1
        && piece.text().length() <= 3
        && piece.text().codePoints().allMatch(Character::isLetterOrDigit);
  }

  private static Piece level(Piece whole, Piece on) {
    return new Piece(
        whole.text(),
        whole.left(),
        whole.right(),
        on.base(),
        on.size(),
        on.bold(),
        on.light(),
        on.recognised(),
        0,
        whole.glyphs(),
        whole.gapBefore(),
        whole.gapAfter());
  }

  /** The piece that begins where this one ends, on or near its line, or -1. */
  private static int follower(List<Piece> sorted, int at) {
    Piece piece = sorted.get(at);
    for (int i = at + 1; i < sorted.size() && i <= at + NEIGHBOURS; i++) {
      if (touches(piece, sorted.get(i), piece.raised() != 0)) {
        return i;
      }
    }
    return -1;
  }

  private static int predecessor(List<Piece> sorted, int at) {
    Piece piece = sorted.get(at);
    for (int i = at - 1; i >= 0 && i >= at - NEIGHBOURS; i--) {
      if (touches(sorted.get(i), piece, piece.raised() != 0)) {
        return i;
      }
    }
    return -1;
  }

  /**
   * Whether two pieces stand close on one line; beside a script the space of its own line may lie.
   */
  private static boolean touches(Piece left, Piece right, boolean script) {
    double em = Math.max(left.size(), right.size());
    double gap = right.left() - left.right();
    boolean space = left.gapAfter() || right.gapBefore();
    double within = space ? Spacing.DRAWN_SPACE : Spacing.WITHIN_WORD;
    return gap > -Spacing.OVERLAP * em
        && gap <= em * (script ? SCRIPT_GAP : within)
        && Math.abs(left.base() - right.base()) < 0.7 * em;
  }
}
