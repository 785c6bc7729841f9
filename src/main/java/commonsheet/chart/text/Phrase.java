package commonsheet.chart.text;

import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Words that are read as one: side by side on a line without a wide gap.
 *
 * @param words in reading order
 * @param turn direction of reading, as for {@link Word}
 */
public record Phrase(List<Word> words, Box box, int turn) {
  /** Ideographs stand closer than this share of their height when they are one word. */
  /** Some legends set "° C" with a gap wider than between words, in heights of a line. */
  private static final double WIDEST_DEGREE = 1.5;

  private static final double CLOSE = 0.12;

  public Phrase {
    words = List.copyOf(words);
  }

  private static Phrase of(List<Word> words) {
    Box box = Box.around(words.stream().map(Word::box).toList());
    return new Phrase(words, box, words.get(0).turn());
  }

  /** One phrase on two lines. */
  public Phrase followedBy(Phrase next) {
    List<Word> all = new ArrayList<>(words);
    all.addAll(next.words);
    return of(all);
  }

  /** The words with spaces where there are gaps. */
  public String text() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < words.size(); i++) {
      if (i > 0 && (gap(words.get(i - 1), words.get(i)) > CLOSE || !sameLine(i))) {
        text.append(' ');
      }
      text.append(words.get(i).text());
    }
    return text.toString();
  }

  private boolean sameLine(int i) {
    return shared(words.get(i - 1), words.get(i)) > 0.3;
  }

  public boolean recognised() {
    return words.stream().anyMatch(Word::recognised);
  }

  /** The least confidence of its words, of those with figures where there are any. */
  public double confidence() {
    boolean figures = words.stream().anyMatch(Phrase::hasFigure);
    return words.stream()
        .filter(word -> !figures || hasFigure(word))
        .mapToDouble(Word::confidence)
        .min()
        .orElse(0);
  }

  private static boolean hasFigure(Word word) {
    return word.text().chars().anyMatch(Character::isDigit);
  }

  /** Height of a line in points. */
  public double lineHeight() {
    Box first = words.get(0).box();
    return turn % 180 == 0 ? first.height() : first.width();
  }

  /**
   * The phrases of a page's words: level ones from the top, then those on their side.
   *
   * @param widest the widest gap within a phrase, in heights of a line
   * @param walls boxes no phrase runs across, such as samples of a legend
   */
  public static List<Phrase> among(List<Word> words, double widest, List<Box> walls) {
    List<Phrase> phrases = new ArrayList<>();
    for (int turn : new int[] {0, 90, 270}) {
      List<Word> rest = new ArrayList<>(words.stream().filter(w -> w.turn() == turn).toList());
      rest.sort(Comparator.comparingDouble(Phrase::start));
      while (!rest.isEmpty()) {
        List<Word> run = new ArrayList<>(List.of(rest.remove(0)));
        for (Word next = next(run, rest, widest, walls);
            next != null;
            next = next(run, rest, widest, walls)) {
          run.add(next);
          rest.remove(next);
        }
        phrases.add(of(run));
      }
    }
    phrases.sort(
        Comparator.comparingInt(Phrase::turn)
            .thenComparingDouble(phrase -> phrase.box().y())
            .thenComparingDouble(phrase -> phrase.box().x()));
    return phrases;
  }

  private static Word next(List<Word> run, List<Word> rest, double widest, List<Box> walls) {
    Word last = run.get(run.size() - 1);
    Word next = null;
    for (Word word : rest) {
      double gap = gap(last, word);
      double most = isDegree(last) && word.text().startsWith("C") ? WIDEST_DEGREE : widest;
      boolean fits = gap > -0.5 && gap < most && shared(last, word) > 0.5 && alike(last, word);
      if (fits && (next == null || start(word) < start(next)) && !walled(last, word, walls)) {
        next = word;
      }
    }
    return next;
  }

  private static boolean isDegree(Word word) {
    return word.text().endsWith("°") || word.text().endsWith("º");
  }

  /** Words of quite different sizes are not one phrase, except raised ones. */
  private static boolean alike(Word one, Word other) {
    double ratio = thickness(one) / thickness(other);
    return (ratio > 0.6 && ratio < 1.67) || other.raised() != 0 || one.raised() != 0;
  }

  private static boolean walled(Word left, Word right, List<Box> walls) {
    Box between = left.box().union(right.box());
    for (Box wall : walls) {
      boolean inside =
          wall.centreX() > left.box().centreX()
              && wall.centreX() < right.box().centreX()
              && wall.centreY() > between.y()
              && wall.centreY() < between.bottom();
      if (inside) {
        return true;
      }
    }
    return false;
  }

  /** Place of a word's beginning along its direction of reading. */
  private static double start(Word word) {
    return switch (word.turn()) {
      case 90 -> -word.box().bottom();
      case 270 -> word.box().y();
      default -> word.box().x();
    };
  }

  private static double end(Word word) {
    return switch (word.turn()) {
      case 90 -> -word.box().y();
      case 270 -> word.box().bottom();
      default -> word.box().right();
    };
  }

  private static double thickness(Word word) {
    return Math.max(0.1, word.turn() % 180 == 0 ? word.box().height() : word.box().width());
  }

  private static double gap(Word left, Word right) {
    return (start(right) - end(left)) / thickness(left);
  }

  private static double shared(Word one, Word other) {
    return one.turn() % 180 == 0
        ? one.box().sharedHeight(other.box())
        : one.box().sharedWidth(other.box());
  }
}
