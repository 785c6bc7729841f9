package commonsheet.quantity;

import java.util.ArrayList;
import java.util.List;

/** Settles what only the figures before and behind a figure can tell. */
final class Neighbours {
  private static final String TIMES = "×*xX";

  private final FoldedText text;

  Neighbours(FoldedText text) {
    this.text = text;
  }

  List<Figure> settle(List<Figure> figures) {
    List<Figure> settled = new ArrayList<>(figures);
    for (int i = settled.size() - 2; i >= 0; i--) {
      settled.set(i, withSharedUnit(settled.get(i), settled.get(i + 1)));
    }
    for (int i = 1; i < settled.size(); i++) {
      if (couldBeOneWithPrevious(settled.get(i - 1), settled.get(i))) {
        settled.set(i, doubted(settled.get(i)));
      }
    }
    return List.copyOf(settled);
  }

  /** In "5.0 × 30 × 48 mm" the unit belongs to all three. */
  private Figure withSharedUnit(Figure figure, Figure next) {
    int at = text.afterSpaces(figure.end());
    boolean product = TIMES.indexOf(text.at(at)) >= 0 && text.afterSpaces(at + 1) == next.start();
    boolean shares =
        product
            && figure.unit() == null
            && next.unit() != null
            && next.unit().dimension() == Dimension.LENGTH;
    return shares ? with(figure, next.unit(), figure.ambiguous()) : figure;
  }

  private boolean couldBeOneWithPrevious(Figure previous, Figure figure) {
    String between = text.printed(previous.end(), figure.start());
    boolean onlySpaces = !between.isEmpty() && between.isBlank() && between.indexOf('\n') < 0;
    return onlySpaces
        && (couldBeRange(previous, figure)
            || couldBeThousands(previous, figure)
            || couldBeSubscript(previous, figure));
  }

  /** "0 -45 °C": a sign or a dash. */
  private boolean couldBeRange(Figure previous, Figure figure) {
    return figure.value() != null
        && figure.unit() != null
        && figure.unit().dimension() == Dimension.TEMPERATURE
        && text.at(figure.start()) == '-'
        && previous.value() != null
        && (previous.unit() == null || previous.unit().equals(figure.unit()))
        && previous.value() < -figure.value();
  }

  /**
   * "2 500 mAh": two numbers or one with a space for its thousands; a row's number begins its line.
   */
  private boolean couldBeThousands(Figure previous, Figure figure) {
    return previous.unit() == null
        && previous.value() != null
        && isDigits(previous, 1, 3)
        && text.at(figure.start() + 3) != ','
        && digitsAt(figure.start()) == 3
        && !beginsLine(previous.start());
  }

  /** "0.2C 5 A": five amperes or the C₅ A of a rate. */
  private boolean couldBeSubscript(Figure previous, Figure figure) {
    return previous.unit() != null
        && previous.unit().dimension() == Dimension.RATE
        && previous.text().endsWith("C")
        && digitsAt(figure.start()) == 1
        && text.at(figure.start()) == '5'
        && figure.unit() != null
        && figure.unit().dimension() == Dimension.CURRENT
        && FoldedText.isSpace(text.at(figure.start() + 1));
  }

  private boolean isDigits(Figure figure, int least, int most) {
    int digits = digitsAt(figure.start());
    return digits >= least && digits <= most && figure.start() + digits == figure.end();
  }

  private int digitsAt(int place) {
    int at = place;
    while (FoldedText.isDigit(text.at(at))) {
      at++;
    }
    return at - place;
  }

  private boolean beginsLine(int place) {
    int at = place - 1;
    while (text.at(at) == ' ') {
      at--;
    }
    return text.at(at) == '\n' || at < 0;
  }

  private static Figure doubted(Figure figure) {
    return with(figure, figure.unit(), true);
  }

  private static Figure with(Figure figure, TradeUnit unit, boolean ambiguous) {
    return new Figure(
        figure.start(),
        figure.end(),
        figure.text(),
        figure.value(),
        figure.low(),
        figure.high(),
        figure.bound(),
        figure.qualifier(),
        figure.approximate(),
        unit,
        ambiguous);
  }
}
