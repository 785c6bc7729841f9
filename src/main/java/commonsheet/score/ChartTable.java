package commonsheet.score;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The scores of charts as a table of plain text. */
final class ChartTable {
  private static final List<String> HEADER =
      List.of(
          "charts of",
          "charts",
          "found",
          "axes",
          "whole",
          "curves",
          "right",
          "unsure",
          "complete",
          "wrong",
          "missed",
          "spurious",
          "silent");

  private static final String NOTE =
      """
      found: charts with curves; axes: with the right quantities and units; whole: with every curve
      right and no other; right: axes, conditions and points agree, some of them standing as unsure;
      complete: right with every condition the chart states; silent: wrong or spurious curves that
      do not stand as unsure
      """;

  private ChartTable() {}

  static String text(List<ChartScore> scores) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(HEADER);
    scores.forEach(score -> lines.add(line(score.sheet(), score.tally())));
    lines.add(List.of());
    lines.add(line("all charts", ChartTally.of(scores)));
    return ScoreTable.align(lines) + '\n' + NOTE;
  }

  private static List<String> line(String name, ChartTally t) {
    List<String> line = new ArrayList<>(List.of(name));
    IntStream.of(
            t.charts(),
            t.found(),
            t.axes(),
            t.whole(),
            t.curves(),
            t.right(),
            t.unsure(),
            t.complete(),
            t.wrong(),
            t.missed(),
            t.spurious(),
            t.silent())
        .mapToObj(Integer::toString)
        .forEach(line::add);
    return line;
  }
}
