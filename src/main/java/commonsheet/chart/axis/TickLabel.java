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
  public TickLabel {
    words = List.copyOf(words);
  }

  /** Whether it stands neither level nor upright, so that its middle is not at its tick. */
  public boolean aslant() {
    return words.stream().anyMatch(word -> word.turn() % 90 != 0);
  }

  public boolean recognised() {
    return words.stream().anyMatch(Word::recognised);
  }
}
