package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds headers and footers: what stands at the same place on several pages, page numbers aside.
 */
final class RunningText {
  /** Shares of the page's height within which headers and footers stand. */
  private static final double HEADER = 0.22;

  private static final double FOOTER = 0.88;

  /** Points by which the place may differ from page to page. */
  private static final double SAME_PLACE = 4;

  /** Pages on which a text must stand, in a file of more than three pages; otherwise on two. */
  private static final int LEAST_PAGES = 3;

  /** Share of a table's words that must be running for the whole table to be. */
  private static final double RUNNING_TABLE = 0.7;

  private record Mark(String text, long x, long y) {}

  private RunningText() {}

  /**
   * The running words of each page.
   *
   * @param tables the ruled tables of each page: a table runs as a whole or not at all
   */
  static List<List<Word>> find(List<PageContent> pages, List<List<Table>> tables) {
    List<List<Line>> lines = new ArrayList<>();
    pages.forEach(p -> lines.add(LineBuilder.fragments(p.body(), 1)));
    Map<Mark, Set<Integer>> seen = new HashMap<>();
    for (int i = 0; i < pages.size(); i++) {
      for (Line line : lines.get(i)) {
        for (Mark mark : around(line)) {
          seen.computeIfAbsent(mark, m -> new HashSet<>()).add(i);
        }
      }
    }
    int least = pages.size() <= LEAST_PAGES ? 2 : LEAST_PAGES;
    List<List<Word>> running = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      running.add(onPage(pages.get(i), lines.get(i), tables.get(i), seen, least));
    }
    return running;
  }

  private static List<Word> onPage(
      PageContent page,
      List<Line> lines,
      List<Table> tables,
      Map<Mark, Set<Integer>> seen,
      int least) {
    Set<Word> running = Collections.newSetFromMap(new IdentityHashMap<>());
    List<Line> repeated =
        lines.stream()
            .filter(l -> around(l).stream().anyMatch(m -> pages(seen, m) >= least))
            .toList();
    Set<Line> again = Collections.newSetFromMap(new IdentityHashMap<>());
    again.addAll(repeated);
    double header = firstOther(lines, again, page.height());
    double footer = lastOther(lines, again, page.height());
    for (Line line : repeated) {
      double y = line.box().centreY();
      if (y < header || y > footer) {
        running.addAll(line.words());
      }
    }
    for (Table table : tables) {
      List<Word> words = new ArrayList<>();
      table.cells().forEach(c -> c.lines().forEach(l -> words.addAll(l.words())));
      long known = words.stream().filter(running::contains).count();
      boolean atEdge =
          table.box().bottom() < HEADER * page.height() || table.box().y() > FOOTER * page.height();
      if (known >= RUNNING_TABLE * words.size() && atEdge) {
        running.addAll(words);
      } else {
        words.forEach(running::remove);
      }
    }
    return page.body().stream().filter(running::contains).toList();
  }

  private static int pages(Map<Mark, Set<Integer>> seen, Mark mark) {
    return seen.getOrDefault(mark, Set.of()).size();
  }

  /**
   * Where the first line begins that no other page has; a page number or date apart may stand
   * before.
   */
  private static double firstOther(List<Line> lines, Set<Line> again, double height) {
    double y = HEADER * height;
    for (Line line : lines) {
      if (!again.contains(line) && !isBesideRunning(line, again)) {
        y = Math.min(y, line.box().y());
      }
    }
    return y;
  }

  private static double lastOther(List<Line> lines, Set<Line> again, double height) {
    double y = FOOTER * height;
    for (Line line : lines) {
      if (!again.contains(line) && !isBesideRunning(line, again)) {
        y = Math.max(y, line.box().bottom());
      }
    }
    return y;
  }

  private static boolean isBesideRunning(Line line, Set<Line> again) {
    return again.stream().anyMatch(o -> o.box().sharedHeight(line.box()) > 0.5);
  }

  /**
   * The line's mark with its neighbours, so that rounding does not part what stands at one place.
   */
  private static List<Mark> around(Line line) {
    String text = withoutNumbers(line.text());
    long x = Math.round(line.box().centreX() / (2 * SAME_PLACE));
    long y = Math.round(line.box().centreY() / (2 * SAME_PLACE));
    double dx = line.box().centreX() / (2 * SAME_PLACE) - x;
    double dy = line.box().centreY() / (2 * SAME_PLACE) - y;
    long nextX = x + (dx > 0 ? 1 : -1);
    long nextY = y + (dy > 0 ? 1 : -1);
    return List.of(
        new Mark(text, x, y),
        new Mark(text, nextX, y),
        new Mark(text, x, nextY),
        new Mark(text, nextX, nextY));
  }

  private static String withoutNumbers(String text) {
    StringBuilder out = new StringBuilder();
    boolean inNumber = false;
    for (int i = 0; i < text.length(); i++) {
      boolean digit = Character.isDigit(text.charAt(i));
      if (!digit || !inNumber) {
        out.append(digit ? '#' : text.charAt(i));
      }
      inNumber = digit;
    }
    return out.toString();
  }
}
