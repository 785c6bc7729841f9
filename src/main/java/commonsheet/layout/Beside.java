package commonsheet.layout;

import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Gives each piece of a value cell the lines of the remark cell that stand level with it. */
final class Beside {
  private Beside() {}

  /** For each piece its own lines, or all of the remark where the lines cannot be shared out. */
  static List<Passage> each(List<Passage> pieces, Passage remark) {
    List<Passage> whole = Collections.nCopies(pieces.size(), remark);
    List<Passage> lines = remark.lines();
    if (pieces.size() < 2
        || lines.size() < pieces.size()
        || isProse(lines)
        || pieces.stream().anyMatch(p -> p.box() == null)) {
      return whole;
    }
    List<Passage> shared = new ArrayList<>(Collections.nCopies(pieces.size(), Passage.EMPTY));
    for (Passage line : lines) {
      int nearest = nearest(pieces, line.box());
      shared.set(nearest, shared.get(nearest).then(line));
    }
    return shared.stream().anyMatch(Passage::isBlank) ? whole : shared;
  }

  /**
   * Lines with more words than this on average are sentences, which go with the whole cell. Common
   * practice, no source.
   */
  private static final double LONGEST_ITEM_WORDS = 6;

  private static boolean isProse(List<Passage> lines) {
    double words = lines.stream().mapToInt(l -> Tokens.of(l.text()).size()).average().orElse(0);
    return (words > LONGEST_ITEM_WORDS
            && lines.stream()
                .noneMatch(l -> l.text().chars().anyMatch(c -> Tokens.isIdeograph((char) c))))
        || words > 2 * LONGEST_ITEM_WORDS;
  }

  private static int nearest(List<Passage> pieces, Box line) {
    int nearest = 0;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < pieces.size(); i++) {
      double distance = Math.abs(pieces.get(i).box().centreY() - line.centreY());
      if (distance < least) {
        least = distance;
        nearest = i;
      }
    }
    return nearest;
  }
}
