package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/** The numbers that stand along the sides of a box, as the labels of ticks do. */
final class TickWords {
  /** How far in points a label's near edge can stand from its axis. */
  private static final double FARTHEST = 32;

  /** How far in points a label may reach over its axis. */
  private static final double OVERLAP = 3;

  /** How far in points beyond the ends of its axis the middle of a label can stand. */
  private static final double BEYOND = 6;

  /** Points between the middles of two labels of one axis. */
  private static final double APART = 5;

  /** How far in points behind a label others of its row, or its column, can stand. */
  private static final double ROW = 5;

  private static final double COLUMN = 18;

  /** Share of the steps from label to label that must go the same way; some words are misread. */
  private static final double IN_ORDER = 0.75;

  private static final Pattern NUMBER =
      Pattern.compile("[-+\u2212\u2013\u2010]?\\d{1,6}([.,]\\d+)?(%|\u00b0C|\u2103)?");

  private final List<Word> numbers;

  TickWords(List<Word> words) {
    numbers = words.stream().filter(word -> NUMBER.matcher(word.text().strip()).matches()).toList();
  }

  /** How many numbers in order stand along the left of a box. */
  int besideLeft(Box box) {
    return inOrder(box.y(), box.bottom(), false, word -> box.x() - word.right());
  }

  /** How many numbers in order stand along the right of a box. */
  int besideRight(Box box) {
    return inOrder(box.y(), box.bottom(), false, word -> word.x() - box.right());
  }

  /** How many numbers in order stand along the bottom of a box. */
  int below(Box box) {
    return inOrder(box.x(), box.right(), true, word -> word.y() - box.bottom());
  }

  /** How many numbers in order stand along the top of a box. */
  int above(Box box) {
    return inOrder(box.x(), box.right(), true, word -> box.y() - word.bottom());
  }

  private record Label(double place, double off, double value) {}

  /**
   * The labels along a side that rise or fall all the way, as ticks do; numbers of a table or of
   * dimensions come in any order.
   */
  private int inOrder(double from, double to, boolean level, ToDoubleFunction<Box> gap) {
    List<Label> labels = new ArrayList<>();
    for (Word word : numbers) {
      Box box = word.box();
      double place = level ? box.centreX() : box.centreY();
      double off = gap.applyAsDouble(box);
      boolean near = off >= -OVERLAP && off <= FARTHEST;
      if (near && place >= from - BEYOND && place <= to + BEYOND) {
        labels.add(new Label(place, off, value(word.text())));
      }
    }
    List<Label> row = fullest(labels, level ? ROW : COLUMN);
    row.sort(Comparator.comparingDouble(Label::place));
    return inOrder(row);
  }

  /** The labels that stand about as far off, where most do; the nearest of equally many. */
  private static List<Label> fullest(List<Label> labels, double depth) {
    labels.sort(Comparator.comparingDouble(Label::off));
    List<Label> best = new ArrayList<>();
    for (int i = 0; i < labels.size(); i++) {
      int end = i;
      while (end < labels.size() && labels.get(end).off() <= labels.get(i).off() + depth) {
        end++;
      }
      if (end - i > best.size()) {
        best = new ArrayList<>(labels.subList(i, end));
      }
    }
    return best;
  }

  private static int inOrder(List<Label> labels) {
    int rising = 0;
    int falling = 0;
    int places = labels.isEmpty() ? 0 : 1;
    for (int i = 1; i < labels.size(); i++) {
      if (labels.get(i).place() - labels.get(i - 1).place() >= APART) {
        places++;
        rising += labels.get(i).value() > labels.get(i - 1).value() ? 1 : 0;
        falling += labels.get(i).value() < labels.get(i - 1).value() ? 1 : 0;
      }
    }
    return Math.max(rising, falling) >= IN_ORDER * (places - 1) ? places : 0;
  }

  private static double value(String text) {
    String digits = text.strip().replace(',', '.').replaceAll("[^0-9.]", "");
    double value = Double.parseDouble(digits);
    return Character.isDigit(text.strip().charAt(0)) || text.strip().startsWith("+")
        ? value
        : -value;
  }
}
