package commonsheet.layout;

import static commonsheet.layout.Told.Part.*;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.TradeUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads running text ("discharge at 0.2 C to 2.5 V cut-off after storage at 60 °C for 7 days") for
 * the part that each figure plays. Works by the nearest words that say which way the current goes
 * and where it ends, in any language of the vocabulary.
 */
final class Sentences {

  /** "0.2C discharge": the word follows at once. */
  private static final int ADJACENT = 4;

  /** Storage shorter than this is a rest before a test. Common practice, no source. */
  private static final double SHORTEST_STORAGE_SECONDS = 20 * 3600.0;

  /** End-of-charge currents are small: 0.01 to 0.1 C as a rule. Common practice, no source. */
  private static final double HIGHEST_TAPER_RATE = 0.2;

  /**
   * No lithium-ion cell on sale is charged to less, lithium titanate apart. Common practice, no
   * source.
   */
  private static final double LOWEST_CHARGE_VOLTAGE = 3.4;

  /** Not even lithium titanate is charged to less, in volts. Common practice, no source. */
  private static final double LOWEST_TITANATE_CHARGE_VOLTAGE = 2.4;

  /**
   * Charge and discharge end this far apart, in volts; a nearer pair is a shipping voltage or the
   * like. Common practice, no source.
   */
  private static final double NARROWEST_WINDOW = 0.5;

  private static final TradeUnit RATE = new TradeUnit("h-1", Dimension.RATE);

  /** Which way the current goes. */
  enum Direction {
    CHARGE,
    DISCHARGE,
    BOTH,
    UNKNOWN
  }

  private final Vocabulary vocabulary;
  private final Figures parser;

  Sentences(Vocabulary vocabulary, Figures parser) {
    this.vocabulary = vocabulary;
    this.parser = parser;
  }

  /**
   * The figures of a text in order, each with its part; {@code byDefault} is the direction where
   * the text says none.
   */
  List<Told> read(String text, Direction byDefault) {
    List<Hit> hits = vocabulary.hits(text);
    List<Figure> printed = parser.find(text);
    List<Figure> figures =
        printed.stream()
            .map(f -> speaksOfCurrent(hits, f) || hasAmperes(printed, f) ? asRate(f) : f)
            .toList();
    if (figures.isEmpty()) {
      return List.of();
    }
    List<Told> told = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      Figure figure = figures.get(i);
      if (figure.unit() == null) {
        continue;
      }
      if (figure.unit().dimension() == Dimension.VOLTAGE && figure.isRange()) {
        told.addAll(voltageWindow(figure));
        continue;
      }
      told.add(new Told(part(text, hits, figures, i, byDefault), figure));
    }
    return told;
  }

  /** "10C (300 A)": the amperes in the bracket say that C is no temperature. */
  private static boolean hasAmperes(List<Figure> figures, Figure figure) {
    return figures.stream()
        .anyMatch(
            f ->
                f.start() >= figure.end()
                    && f.start() - figure.end() <= ADJACENT
                    && f.unit() != null
                    && f.unit().dimension() == Dimension.CURRENT);
  }

  private static boolean speaksOfCurrent(List<Hit> hits, Figure figure) {
    return hits.stream()
        .anyMatch(
            h ->
                h.start() >= figure.end()
                    && h.start() - figure.end() <= ADJACENT
                    && (h.means("charge")
                        || h.means("discharge")
                        || h.means("rate")
                        || h.means("current")));
  }

  /**
   * Whether a concept stands anywhere between the figure before, or the sentence's start, and this
   * figure.
   */
  boolean saidBefore(String text, Figure figure, String concept) {
    List<Figure> figures = parser.find(text);
    int index = figures.indexOf(figure);
    return index >= 0
        && new FigureView(text, vocabulary.hits(text), figures, index).sinceLastFigure(concept);
  }

  /**
   * Whether a concept introduces this figure, with nothing but words of the current between them.
   */
  boolean introducedBy(String text, Figure figure, String concept) {
    List<Figure> figures = parser.find(text);
    int index = figures.indexOf(figure);
    return index >= 0
        && new FigureView(text, vocabulary.hits(text), figures, index).joinedTo(concept);
  }

  /**
   * "20C" was taken for a temperature without its degree sign; where a current is spoken of it is a
   * multiple of C.
   */
  static Figure asRate(Figure figure) {
    boolean bareC =
        figure.ambiguous()
            && figure.unit() != null
            && figure.unit().dimension() == Dimension.TEMPERATURE
            && figure.value() != null
            && figure.low() == null
            && figure.text().trim().endsWith("C");
    return bareC
        ? new Figure(
            figure.start(),
            figure.end(),
            figure.text(),
            figure.value(),
            null,
            null,
            figure.bound(),
            figure.qualifier(),
            figure.approximate(),
            RATE,
            false)
        : figure;
  }

  /** "4.2 to 3.0 V": from the end of charge to the end of discharge. */
  private static List<Told> voltageWindow(Figure figure) {
    double high = Math.max(figure.low(), figure.high());
    double low = Math.min(figure.low(), figure.high());
    boolean window =
        figure.unit().ucum().equals("V")
            && high > LOWEST_CHARGE_VOLTAGE
            && high - low >= NARROWEST_WINDOW;
    return window
        ? List.of(
            new Told(CHARGE_VOLTAGE, single(figure, high)),
            new Told(CUTOFF_VOLTAGE, single(figure, low)))
        : List.of();
  }

  private static Figure single(Figure figure, double value) {
    return new Figure(
        figure.start(),
        figure.end(),
        figure.text(),
        value,
        null,
        null,
        figure.bound(),
        null,
        false,
        figure.unit(),
        false);
  }

  private Told.Part part(
      String text, List<Hit> hits, List<Figure> figures, int index, Direction byDefault) {
    Figure figure = figures.get(index);
    FigureView view = new FigureView(text, hits, figures, index);
    if (view.firstOfPair()) {
      return CHARGE_CURRENT;
    }
    if (view.secondOfPair()) {
      return DISCHARGE_CURRENT;
    }
    return switch (figure.unit().dimension()) {
      case VOLTAGE -> voltage(view, byDefault);
      case CURRENT, RATE -> current(view, byDefault);
      case TEMPERATURE -> temperature(view);
      case TIME -> time(view);
      case FREQUENCY -> FREQUENCY;
      case RATIO -> share(view);
      case CYCLES -> CYCLES;
      default -> OTHER;
    };
  }

  private Told.Part voltage(FigureView view, Direction byDefault) {
    Direction direction = view.direction();
    boolean end =
        view.justAfter("cutoff") || view.sinceLastFigure("cutoff") || view.sinceLastFigure("until");
    if (view.figure().isRange() || view.figure().value() == null) {
      return OTHER;
    }
    double volts = view.figure().in("V").value();
    if (direction == Direction.UNKNOWN && volts > LOWEST_CHARGE_VOLTAGE && view.isLedTo()) {
      return CHARGE_VOLTAGE;
    }
    if (direction == Direction.CHARGE && volts < LOWEST_TITANATE_CHARGE_VOLTAGE) {
      return CUTOFF_VOLTAGE;
    }
    if (view.sinceLastFigure("cutoff") && view.figure().in("V").value() < LOWEST_CHARGE_VOLTAGE) {
      return CUTOFF_VOLTAGE;
    }
    if (direction == Direction.DISCHARGE || (direction == Direction.BOTH && end)) {
      return CUTOFF_VOLTAGE;
    }
    if (view.sinceLastFigure("constantvoltage") || view.justAfter("constantvoltage")) {
      return CHARGE_VOLTAGE;
    }
    if (direction == Direction.CHARGE) {
      return CHARGE_VOLTAGE;
    }
    if (byDefault == Direction.CHARGE) {
      return CHARGE_VOLTAGE;
    }
    return end || byDefault == Direction.DISCHARGE ? CUTOFF_VOLTAGE : OTHER;
  }

  private Told.Part current(FigureView view, Direction byDefault) {
    Direction direction = view.direction();
    boolean end =
        view.justAfter("cutoff")
            || view.justAfter("taper")
            || view.sinceLastFigure("taper")
            || (view.sinceLastFigure("cutoff") && !view.sinceLastFigure("voltage"));
    boolean charging =
        direction == Direction.CHARGE
            || (direction == Direction.UNKNOWN && view.inSentence("constantvoltage"));
    if (end
        && (charging || (direction == Direction.UNKNOWN && byDefault != Direction.DISCHARGE))
        && isSmall(view.figure())) {
      return TAPER_CURRENT;
    }
    if (direction == Direction.UNKNOWN && view.leadsToVoltageAbove(LOWEST_CHARGE_VOLTAGE)) {
      return CHARGE_CURRENT;
    }
    return switch (direction == Direction.UNKNOWN ? byDefault : direction) {
      case CHARGE -> CHARGE_CURRENT;
      case DISCHARGE -> DISCHARGE_CURRENT;
      case BOTH -> BOTH_CURRENTS;
      case UNKNOWN -> OTHER;
    };
  }

  private static boolean isSmall(Figure figure) {
    return figure.unit().dimension() != Dimension.RATE
        || figure.value() == null
        || figure.value() <= HIGHEST_TAPER_RATE;
  }

  private static Told.Part temperature(FigureView view) {
    if (view.lastOf(List.of("storage", "charge", "discharge")).equals("storage")
        || view.justAfter("storage")) {
      return STORAGE_TEMPERATURE;
    }
    return view.direction() == Direction.DISCHARGE ? DISCHARGE_TEMPERATURE : TEMPERATURE;
  }

  private static Told.Part time(FigureView view) {
    Double seconds = view.figure().value() == null ? null : view.figure().in("s").value();
    return seconds != null && seconds >= SHORTEST_STORAGE_SECONDS ? STORAGE_TIME : TIME;
  }

  private static Told.Part share(FigureView view) {
    if (view.justAfterText("dod")
        || view.justAfter("humidity")
        || view.sinceLastFigure("humidity")) {
      return OTHER;
    }
    if (view.justAfter("soc") || view.rightAfter("charge") || view.sinceLastFigure("soc")) {
      return STATE_OF_CHARGE;
    }
    return RETENTION;
  }
}
