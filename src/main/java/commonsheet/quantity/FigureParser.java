package commonsheet.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the numbers of a text with their bounds, tolerances, ranges and units, as the trade prints
 * them.
 *
 * <p>The vocabulary is data: units.yaml has the unit spellings, words.yaml the words for bounds,
 * qualifiers and ranges, characters.yaml the look-alike characters.
 */
public final class FigureParser {
  private final NumberStyle style;

  /**
   * @param style which mark the sheet puts before its decimals; only decides numbers such as 2,550
   *     and 2.550
   */
  public FigureParser(NumberStyle style) {
    this.style = style;
  }

  /**
   * All figures of a text from left to right; they do not overlap. Numbers without a unit come out
   * with a null unit; dates, section numbers and digits inside names such as INR18650 do not come
   * out.
   *
   * @param text any text; line feeds are white space
   */
  public List<Figure> find(String text) {
    FoldedText folded = new FoldedText(text);
    FigureReader reader = new FigureReader(folded, style);
    CodeSkipper codes = new CodeSkipper(folded);
    List<Figure> figures = new ArrayList<>();
    int at = 0;
    int endOfPrevious = -1;
    while (at < folded.length()) {
      int afterCode = codes.afterCode(at);
      if (afterCode > at) {
        at = afterCode;
        continue;
      }
      Figure figure = reader.read(at, endOfPrevious);
      if (figure == null) {
        at = codes.afterUnread(at);
      } else {
        figures.add(figure);
        at = figure.end();
        endOfPrevious = at;
      }
    }
    return new Neighbours(folded).settle(figures);
  }
}
