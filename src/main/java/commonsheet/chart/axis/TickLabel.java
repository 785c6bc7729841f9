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

  public boolean recognised() {
    return words.stream().anyMatch(Word::recognised);
  }
}
