package commonsheet.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** A row of an unruled table while lines are being added to it. */
final class RowDraft {
  private final TreeMap<Integer, List<Word>> cells = new TreeMap<>();
  private final TreeMap<Integer, Integer> spans = new TreeMap<>();
  private boolean sharesLabelAbove;
  private double top = Double.MAX_VALUE;
  private double bottom = -Double.MAX_VALUE;

  RowDraft(List<Line> fragments, Columns columns) {
    for (Line fragment : fragments) {
      for (Line part : columns.cut(fragment)) {
        int column = columns.of(part.words().get(0).box());
        int span = columns.span(part, column);
        if (span == 1) {
          column = columns.of(part.box());
        }
        cells.computeIfAbsent(column, c -> new ArrayList<>()).addAll(part.words());
        spans.merge(column, span, Math::max);
      }
      top = Math.min(top, fragment.box().y());
      bottom = Math.max(bottom, fragment.box().bottom());
    }
  }

  void join(RowDraft below) {
    below.cells.forEach(
        (column, words) -> cells.computeIfAbsent(column, c -> new ArrayList<>()).addAll(words));
    below.spans.forEach((column, span) -> spans.merge(column, span, Math::max));
    top = Math.min(top, below.top);
    bottom = Math.max(bottom, below.bottom);
  }

  /** Makes the label of the row above stand for this row, too. */
  void shareLabelAbove() {
    sharesLabelAbove = true;
  }

  boolean sharesLabelAbove() {
    return sharesLabelAbove;
  }

  /** Where the words of a column end, or the top of the page where it has none. */
  double bottom(int column) {
    return words(column).stream().mapToDouble(w -> w.box().bottom()).max().orElse(0);
  }

  double top() {
    return top;
  }

  double bottom() {
    return bottom;
  }

  int lastColumn() {
    return cells.lastKey();
  }

  int filled() {
    return cells.size();
  }

  boolean has(int column) {
    return cells.containsKey(column);
  }

  List<Word> words(int column) {
    return cells.getOrDefault(column, List.of());
  }

  double size() {
    return cells.firstEntry().getValue().get(0).size();
  }

  /** How many columns the cell covers, no further than the next filled one. */
  int span(int column, int columns) {
    int span = spans.getOrDefault(column, 1);
    Integer next = cells.higherKey(column);
    return Math.min(span, (next == null ? columns : next) - column);
  }
}
