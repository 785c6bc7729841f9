package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts words that stand side by side on lines. */
final class LineBuilder {
  /** Share of their height two words of one line have in common at least. */
  private static final double SAME_LINE = 0.6;

  /**
   * Smallest ratio of font sizes on one line, scripts aside: beside a large title stand lines of
   * their own.
   */
  private static final double SAME_KIND = 0.5;

  private LineBuilder() {}

  /** The lines from top to bottom, each from left to right. */
  static List<Line> lines(List<Word> words) {
    List<List<Word>> lines = new ArrayList<>();
    List<Word> byHeight = new ArrayList<>(words);
    byHeight.sort(Comparator.comparingDouble(w -> w.box().centreY()));
    for (Word word : byHeight) {
      if (word.raised() == 0) {
        List<Word> line = nearest(lines, word);
        if (line == null) {
          line = new ArrayList<>();
          lines.add(line);
        }
        line.add(word);
      }
    }
    byHeight.stream().filter(w -> w.raised() != 0).forEach(w -> addScript(lines, w));
    lines.sort(Comparator.comparingDouble(l -> l.get(0).box().centreY()));
    return lines.stream().map(LineBuilder::line).toList();
  }

  /** The lines cut wherever a gap is wider than so many times the font size. */
  static List<Line> fragments(List<Word> words, double gap) {
    List<Line> out = new ArrayList<>();
    for (Line line : lines(words)) {
      int from = 0;
      double right = -Double.MAX_VALUE;
      for (int i = 0; i < line.words().size(); i++) {
        Word word = line.words().get(i);
        if (i > from && word.box().x() - right > gap * word.size()) {
          out.add(new Line(line.words().subList(from, i)));
          from = i;
        }
        right = Math.max(i == from ? -Double.MAX_VALUE : right, word.box().right());
      }
      out.add(new Line(line.words().subList(from, line.words().size())));
    }
    return out;
  }

  private static List<Word> nearest(List<List<Word>> lines, Word word) {
    List<Word> best = null;
    double most = SAME_LINE;
    for (int i = lines.size() - 1; i >= 0; i--) {
      Word first = lines.get(i).get(0);
      double ratio = Math.min(first.size(), word.size()) / Math.max(first.size(), word.size());
      double shared = first.box().sharedHeight(word.box());
      if (ratio >= SAME_KIND && shared >= most) {
        best = lines.get(i);
        most = shared + 1e-9;
      }
    }
    return best;
  }

  /** A script belongs to the line of the word it touches. */
  private static void addScript(List<List<Word>> lines, Word script) {
    List<Word> best = null;
    double least = script.size() * 2;
    for (List<Word> line : lines) {
      for (Word word : line) {
        if (word.box().sharedHeight(script.box()) > 0.2) {
          double gap =
              Math.max(
                  word.box().x() - script.box().right(), script.box().x() - word.box().right());
          if (Math.abs(gap) < least) {
            least = Math.abs(gap);
            best = line;
          }
        }
      }
    }
    if (best == null) {
      best = new ArrayList<>();
      lines.add(best);
    }
    best.add(script);
  }

  private static Line line(List<Word> words) {
    List<Word> sorted = new ArrayList<>(words);
    sorted.sort(
        Comparator.comparingDouble((Word w) -> w.box().x()).thenComparingDouble(w -> w.box().y()));
    return new Line(sorted);
  }
}
