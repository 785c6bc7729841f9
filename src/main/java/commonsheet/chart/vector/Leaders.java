package commonsheet.chart.vector;

import commonsheet.chart.plot.Pointer;
import commonsheet.chart.plot.Trace;
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
  private static final double LONGEST = 0.45;

  /** How far in points a leader can end from its word and from its curve. */
  private static final double FROM_WORD = 8;

  private static final double FROM_CURVE = 3;

  private static final double BEND = 0.35;

  private Leaders() {}

  static List<Pointer> find(
      List<Stroke> loose, List<Rule> rules, List<Trace> traces, List<Word> words, Box frame) {
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
      if (leads(line.first(), line.last(), traces, words)) {
        pointers.add(new Pointer(line.first(), line.last(), false, line.look().rgb()));
      } else if (leads(line.last(), line.first(), traces, words)) {
        pointers.add(new Pointer(line.last(), line.first(), false, line.look().rgb()));
      }
    }
    return pointers;
  }

  private static boolean leads(Point from, Point to, List<Trace> traces, List<Word> words) {
    return words.stream().anyMatch(word -> Geometry.distance(from, word.box()) <= FROM_WORD)
        && traces.stream().anyMatch(trace -> Geometry.distance(to, trace.points()) <= FROM_CURVE)
        && traces.stream()
            .noneMatch(trace -> Geometry.distance(from, trace.points()) <= FROM_CURVE / 2);
  }
}
