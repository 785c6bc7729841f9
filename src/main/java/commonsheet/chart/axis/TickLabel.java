package commonsheet.chart.axis;

import commonsheet.quantity.TradeUnit;
import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.List;

/**
 * A number beside an axis.
 *
 * @param value in the printed unit
 * @param unit printed behind the number, or null
 * @param words what it is printed with
 */
public record TickLabel(double value, TradeUnit unit, String text, Box box, List<Word> words) {
  /** Half the height of digits in font sizes (Helvetica). */
  private static final double HALF_HEIGHT = 0.36;

  public TickLabel {
    words = List.copyOf(words);
  }

  /** Whether it stands neither level nor upright, so that its middle is not at its tick. */
  public boolean aslant() {
    return words.stream().anyMatch(word -> word.turn() % 90 != 0);
  }

  /** Whether it reads upwards, so that its end is nearest to an axis above it. */
  public boolean rises() {
    return words.stream().anyMatch(word -> word.turn() > 0 && word.turn() < 90);
  }

  /**
   * Where across the page its first or last character stands, in the middle of its height: numbers
   * that rise end at their mark, numbers that fall begin there.
   */
  double end(boolean last) {
    Word word = words.get(last ? words.size() - 1 : 0);
    double half = HALF_HEIGHT * word.size() * Math.abs(Math.sin(Math.toRadians(word.turn())));
    return last ? box.right() - half : box.x() + half;
  }

  public boolean recognised() {
    return words.stream().anyMatch(Word::recognised);
  }
}
