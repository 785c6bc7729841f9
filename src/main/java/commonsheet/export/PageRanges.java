package commonsheet.export;

import java.util.ArrayList;
import java.util.List;

/** Page numbers as in a book's index. */
public final class PageRanges {
  private PageRanges() {}

  /** Ascending pages such as 1, 3, 4, 5 as {@code 1, 3-5}. */
  public static String text(List<Integer> pages) {
    List<String> ranges = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= pages.size(); i++) {
      if (i == pages.size() || pages.get(i) != pages.get(i - 1) + 1) {
        int first = pages.get(start);
        int last = pages.get(i - 1);
        ranges.add(first == last ? Integer.toString(first) : first + "-" + last);
        start = i;
      }
    }
    return String.join(", ", ranges);
  }
}
