package commonsheet.chart.vector;

import commonsheet.chart.plot.Pointer;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;

/** Straight lines without an arrowhead that lead from a word to a curve. */
final class Leaders {
  /** Shortest leader in points. */
  private static final double SHORTEST = 5;

  /** Share of the plot's width a leader can be long. */
  private static final double LONGEST = 0.8;

  /** How far in points a leader can end from its word and from its curve. */
  private static final double FROM_WORD = 8;

  private static final double FROM_CURVE = 3;

  private static final double BEND = 0.35;

  private Leaders() {}

  static List<Pointer> find(
      List<Stroke> loose, List<Rule> rules, List<Stroke> curves, List<Word> words, Box frame) {
    List<Stroke> lines = new ArrayList<>(loose);
    for (Rule rule : rules) {
      lines.add(Stroke.of(List.of(rule.start(), rule.end()), rule.look(), rule.order()));
    }
    List<Pointer> pointers = new ArrayList<>();
    for (Stroke line : lines) {
      if (line.length() < SHORTEST
          || line.length() > LONGEST * frame.width()
          || !line.isStraight(BEND)) {
        continue;
      }
      if (leads(line.first(), line.last(), curves, words)) {
        pointers.add(new Pointer(line.first(), line.last(), false, line.look().rgb()));
      } else if (leads(line.last(), line.first(), curves, words)) {
        pointers.add(new Pointer(line.last(), line.first(), false, line.look().rgb()));
      }
    }
    return pointers;
  }

  /** Whether a straight line leads from a word in the plot to one of the other curves. */
  static boolean isLeader(Stroke line, List<Stroke> curves, List<Word> words, Box frame) {
    if (!line.isStraight(BEND)) {
      return false;
    }
    List<Word> inside =
        words.stream()
            .filter(word -> Geometry.contains(frame, Geometry.centre(word.box())))
            .toList();
    return leads(line.first(), line.last(), curves, inside)
        || leads(line.last(), line.first(), curves, inside);
  }

  private static boolean leads(Point from, Point to, List<Stroke> curves, List<Word> words) {
    return words.stream().anyMatch(word -> Geometry.distance(from, word.box()) <= FROM_WORD)
        && curves.stream().anyMatch(curve -> Geometry.isOn(to, curve.points(), FROM_CURVE))
        && curves.stream().noneMatch(curve -> Geometry.isOn(from, curve.points(), FROM_CURVE / 2));
  }
}
