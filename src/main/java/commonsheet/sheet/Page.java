package commonsheet.sheet;

import java.util.List;

/**
 * One page as evidence.
 *
 * @param number from 1
 * @param width in points, as displayed
 * @param height in points, as displayed
 * @param words every word, in reading order; running headers and footers included
 * @param lines the upright words that stand in no table and in no running header or footer, by
 *     lines in reading order: columns of text one after the other; a gap wide enough to separate a
 *     label from its value stays in one line
 * @param tables ruled tables, then unruled ones that overlap none of them
 * @param running the words of running headers and footers
 * @param kind what the page offers
 * @param mayShowChart whether it draws a picture of the size of a chart, or slanted and curved
 *     lines over as large a part
 * @param turned degrees clockwise by which the page was turned because the words of its picture
 *     stand on their side: 0, 90, 180 or 270; boxes are those of the page so turned
 */
public record Page(
    int number,
    double width,
    double height,
    List<Word> words,
    List<Line> lines,
    List<Table> tables,
    List<Word> running,
    PageKind kind,
    boolean mayShowChart,
    int turned) {
  public Page {
    words = List.copyOf(words);
    lines = List.copyOf(lines);
    tables = List.copyOf(tables);
    running = List.copyOf(running);
  }

  /** A page that draws nothing that can be a chart. */
  public Page(
      int number,
      double width,
      double height,
      List<Word> words,
      List<Line> lines,
      List<Table> tables,
      List<Word> running,
      PageKind kind) {
    this(number, width, height, words, lines, tables, running, kind, false, 0);
  }
}
