package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;
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

  private static final Pattern NUMBER =
      Pattern.compile("[-+\u2212\u2013\u2010]?\\d{1,6}([.,]\\d+)?(%|\u00b0C|\u2103)?");

  private final List<Word> numbers;

  TickWords(List<Word> words) {
    numbers = words.stream().filter(word -> NUMBER.matcher(word.text().strip()).matches()).toList();
  }

  /** How many different places along the left or right side have a number beside them. */
  int besideLeft(Box box) {
    List<Double> places = new ArrayList<>();
    for (Word word : numbers) {
      double gap = box.x() - word.box().right();
      if (isNear(gap) && isAlong(word.box().centreY(), box.y(), box.bottom())) {
        places.add(word.box().centreY());
      }
    }
    return different(places);
  }

  int besideRight(Box box) {
    List<Double> places = new ArrayList<>();
    for (Word word : numbers) {
      double gap = word.box().x() - box.right();
      if (isNear(gap) && isAlong(word.box().centreY(), box.y(), box.bottom())) {
        places.add(word.box().centreY());
      }
    }
    return different(places);
  }

  int below(Box box) {
    List<Double> places = new ArrayList<>();
    for (Word word : numbers) {
      double gap = word.box().y() - box.bottom();
      if (isNear(gap) && isAlong(word.box().centreX(), box.x(), box.right())) {
        places.add(word.box().centreX());
      }
    }
    return different(places);
  }

  int above(Box box) {
    List<Double> places = new ArrayList<>();
    for (Word word : numbers) {
      double gap = box.y() - word.box().bottom();
      if (isNear(gap) && isAlong(word.box().centreX(), box.x(), box.right())) {
        places.add(word.box().centreX());
      }
    }
    return different(places);
  }

  private static boolean isNear(double gap) {
    return gap >= -OVERLAP && gap <= FARTHEST;
  }

  private static boolean isAlong(double place, double from, double to) {
    return place >= from - BEYOND && place <= to + BEYOND;
  }

  private static int different(List<Double> places) {
    places.sort(null);
    int count = 0;
    double last = Double.NEGATIVE_INFINITY;
    for (double place : places) {
      if (place - last >= APART) {
        count++;
        last = place;
      }
    }
    return count;
  }
}
