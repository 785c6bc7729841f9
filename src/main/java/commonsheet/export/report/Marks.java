package commonsheet.export.report;

import commonsheet.export.plot.Plot;
import java.util.List;
import java.util.stream.IntStream;

/** Markers along a line, so that it can be told from others without colour. */
final class Marks {
  private static final int COUNT = 5;

  private Marks() {}

  /** A few points of the line, shifted from one series to the next so that they do not coincide. */
  static List<Plot.Point> along(List<Plot.Point> line, int series) {
    double shift = (series % 4 + 0.5) / 4;
    return IntStream.range(0, COUNT)
        .map(i -> (int) ((i + shift) / (COUNT + 0.5) * (line.size() - 1)))
        .distinct()
        .mapToObj(line::get)
        .toList();
  }
}
