package commonsheet.sheet.ocr;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The first and last pixel of an area in each row. */
final class RowSpans {
  private final Map<Integer, int[]> spans = new TreeMap<>();

  void add(int column, int row) {
    int[] span = spans.computeIfAbsent(row, r -> new int[] {column, column});
    span[0] = Math.min(span[0], column);
    span[1] = Math.max(span[1], column);
  }

  /** The outer corners of those pixels. */
  List<Hull.Corner> corners() {
    List<Hull.Corner> corners = new ArrayList<>();
    spans.forEach(
        (row, span) -> {
          for (int below = 0; below <= 1; below++) {
            corners.add(new Hull.Corner(span[0], row + below));
            corners.add(new Hull.Corner(span[1] + 1, row + below));
          }
        });
    return corners;
  }
}
