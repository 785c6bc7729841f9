package commonsheet.layout;

import static commonsheet.layout.Told.Part.*;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.TradeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Reads running text ("discharge at 0.2 C to 2.5 V cut-off after storage at 60 °C for 7 days") for
 * the part that each figure plays. Works by the nearest words that say which way the current goes
 * and where it ends, in any language of the vocabulary.
 */
final class Sentences {
  /** A word that belongs to a figure stands no further from it than this many characters. */
  private static final int NEAR = 14;

  /** "0.2C discharge": the word follows at once. */
  private static final int ADJACENT = 4;

  /** Words that may stand between a current and the word that says which way it goes. */
  private static final List<String> LINKS =
      List.of(
          "constantcurrent",
          "constantvoltage",
          "rate",
          "current",
          "continuous",
          "standard",
          "cutoff");

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

  private static final Pattern TO =
      Pattern.compile("(?i)\\s*(up )?(to|bis|\u00E0|hasta|\u81F3|\u5230)\\s*");

  private static final Pattern FULLY = Pattern.compile("(?i)\\bfully[ -]?\\w+$");

  private static final Pattern THE_CELL =
      Pattern.compile("(?i)\\s+(cells?|batter(y|ies)|packs?|state|condition)\\b");

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
        && new View(text, vocabulary.hits(text), figures, index).sinceLastFigure(concept);
  }

  /**
   * Whether a concept introduces this figure, with nothing but words of the current between them.
   */
  boolean introducedBy(String text, Figure figure, String concept) {
    List<Figure> figures = parser.find(text);
    int index = figures.indexOf(figure);
    return index >= 0 && new View(text, vocabulary.hits(text), figures, index).joinedTo(concept);
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
    View view = new View(text, hits, figures, index);
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

  private Told.Part voltage(View view, Direction byDefault) {
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
    if (direction == Direction.DISCHARGE || direction == Direction.BOTH && end) {
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

  private Told.Part current(View view, Direction byDefault) {
    Direction direction = view.direction();
    boolean end =
        view.justAfter("cutoff")
            || view.justAfter("taper")
            || view.sinceLastFigure("taper")
            || view.sinceLastFigure("cutoff") && !view.sinceLastFigure("voltage");
    boolean charging =
        direction == Direction.CHARGE
            || direction == Direction.UNKNOWN && view.inSentence("constantvoltage");
    if (end
        && (charging || direction == Direction.UNKNOWN && byDefault != Direction.DISCHARGE)
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

  private static Told.Part temperature(View view) {
    if (view.lastOf(List.of("storage", "charge", "discharge")).equals("storage")
        || view.justAfter("storage")) {
      return STORAGE_TEMPERATURE;
    }
    return view.direction() == Direction.DISCHARGE ? DISCHARGE_TEMPERATURE : TEMPERATURE;
  }

  private static Told.Part time(View view) {
    Double seconds = view.figure().value() == null ? null : view.figure().in("s").value();
    return seconds != null && seconds >= SHORTEST_STORAGE_SECONDS ? STORAGE_TIME : TIME;
  }

  private static Told.Part share(View view) {
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

  /** What stands around one figure. */
  private record View(String text, List<Hit> hits, List<Figure> figures, int index) {
    Figure figure() {
      return figures.get(index);
    }

    /** "(0.5C/0.5C)" gives the charge rate first and the discharge rate second. */
    boolean firstOfPair() {
      return index + 1 < figures.size() && pair(figure(), figures.get(index + 1));
    }

    boolean secondOfPair() {
      return index > 0 && pair(figures.get(index - 1), figure());
    }

    private boolean pair(Figure first, Figure second) {
      return isRate(first)
          && isRate(second)
          && text.substring(first.end(), second.start()).trim().equals("/");
    }

    private static boolean isRate(Figure figure) {
      return figure.unit() != null && figure.unit().dimension() == Dimension.RATE;
    }

    /** "0.5C to 4.2 V": whether the figure behind "to" is a voltage that only a charge reaches. */
    boolean leadsToVoltageAbove(double volts) {
      if (index + 1 >= figures.size()) {
        return false;
      }
      Figure next = figures.get(index + 1);
      return next.unit() != null
          && next.unit().dimension() == Dimension.VOLTAGE
          && next.value() != null
          && next.in("V").value() > volts
          && TO.matcher(text.substring(figure().end(), next.start())).matches();
    }

    /** "0.5C to 4.2 V": whether a current leads to this figure. */
    boolean isLedTo() {
      return index > 0
          && TO.matcher(text.substring(figures.get(index - 1).end(), figure().start())).matches();
    }

    private int sentenceStart() {
      for (int i = figure().start() - 1; i > 0; i--) {
        if (endsSentence(i)) {
          return i + 1;
        }
      }
      return 0;
    }

    private int sentenceEnd() {
      for (int i = figure().end(); i < text.length(); i++) {
        if (endsSentence(i)) {
          return i;
        }
      }
      return text.length();
    }

    private boolean endsSentence(int i) {
      char c = text.charAt(i);
      if (c == '\u3002' || c == ';' || c == '\uFF1B') {
        return true;
      }
      return c == '.'
          && i + 1 < text.length()
          && Character.isWhitespace(text.charAt(i + 1))
          && i > 1
          && Character.isLetterOrDigit(text.charAt(i - 1))
          && Character.isLetterOrDigit(text.charAt(i - 2));
    }

    /**
     * Whether a concept stands between the figure before (or the sentence's start) and this one.
     */
    boolean sinceLastFigure(String concept) {
      int from = index == 0 ? 0 : figures.get(index - 1).end();
      int start = Math.max(from, sentenceStart());
      return hits.stream()
          .anyMatch(
              h ->
                  h.start() >= start
                      && h.end() <= figure().start()
                      && h.means(concept)
                      && !belongsBefore(h, from));
    }

    /** "130mA cut-off, discharge at 0.2C": the word belongs to the figure before it. */
    private boolean belongsBefore(Hit hit, int figureEnd) {
      if (index == 0 || hit.start() - figureEnd > 2) {
        return false;
      }
      String rest = text.substring(hit.end(), figure().start()).stripLeading();
      return rest.startsWith(",")
          || rest.startsWith(";")
          || rest.startsWith(")")
          || rest.startsWith("\uFF0C");
    }

    /**
     * Whether a concept stands before this figure with nothing but words of the current between
     * them.
     */
    boolean joinedTo(String concept) {
      int from = Math.max(index == 0 ? 0 : figures.get(index - 1).end(), sentenceStart());
      for (int i = hits.size() - 1; i >= 0; i--) {
        Hit hit = hits.get(i);
        if (hit.end() <= figure().start() && hit.start() >= from) {
          if (hit.means(concept)) {
            return true;
          }
          if (LINKS.stream().noneMatch(hit::means) && !hit.means("discharge")) {
            return false;
          }
        }
      }
      return false;
    }

    /**
     * Which of some concepts stands last before this figure in its sentence; empty where none does.
     */
    String lastOf(List<String> concepts) {
      int start = sentenceStart();
      String last = "";
      for (Hit hit : hits) {
        if (hit.start() >= start && hit.end() <= figure().start()) {
          last = concepts.stream().filter(hit::means).findFirst().orElse(last);
        }
      }
      return last;
    }

    boolean inSentence(String concept) {
      int start = sentenceStart();
      int end = sentenceEnd();
      return hits.stream().anyMatch(h -> h.start() >= start && h.end() <= end && h.means(concept));
    }

    /** Whether a concept follows closely, nothing but small words between. */
    boolean justAfter(String concept) {
      int limit = Math.min(text.length(), figure().end() + NEAR);
      return hits.stream()
          .anyMatch(
              h ->
                  h.start() >= figure().end()
                      && h.start() <= limit
                      && h.means(concept)
                      && joined(h.start()));
    }

    /** Whether a concept follows with nothing but a space between. */
    boolean rightAfter(String concept) {
      return hits.stream()
          .anyMatch(
              h ->
                  h.start() >= figure().end()
                      && h.start() - figure().end() <= 1
                      && h.means(concept));
    }

    boolean justAfterText(String word) {
      int limit = Math.min(text.length(), figure().end() + NEAR);
      return text.substring(figure().end(), limit)
          .toLowerCase(java.util.Locale.ROOT)
          .contains(word);
    }

    /** "100mA cut-off and the discharge": what follows "and" is another matter. */
    private boolean parted(int start) {
      return hits.stream()
          .anyMatch(h -> h.start() >= figure().end() && h.end() <= start && h.means("and"));
    }

    private boolean joined(int start) {
      for (int i = figure().end(); i < start; i++) {
        char c = text.charAt(i);
        if (c == ','
            || c == '\uFF0C'
            || c == '.'
            || c == ';'
            || c == '\u3002'
            || Character.isDigit(c)) {
          return false;
        }
      }
      return true;
    }

    Direction direction() {
      Direction after = following();
      if (after != Direction.UNKNOWN) {
        return after;
      }
      Direction before = preceding();
      return before == Direction.UNKNOWN ? laterInSentence() : before;
    }

    /** "at 0.2C down to 2.75 V discharged": the verb comes last. */
    private Direction laterInSentence() {
      int end = sentenceEnd();
      for (Hit hit : hits) {
        if (hit.start() >= figure().end()
            && hit.end() <= end
            && directionOf(hit) != Direction.UNKNOWN
            && !isPast(hit)) {
          return Tokens.isIdeograph(text.charAt(hit.start()))
              ? directionOf(hit)
              : Direction.UNKNOWN;
        }
      }
      return Direction.UNKNOWN;
    }

    /** "after charging" in Chinese and Japanese: the word for after follows. */
    private boolean isPast(Hit hit) {
      return hit.end() < text.length()
          && (text.charAt(hit.end()) == '\u540E' || text.charAt(hit.end()) == '\u5F8C');
    }

    /** "The fully charged cell" says what the cell is, not which way the current goes. */
    private boolean isState(Hit hit) {
      return text.substring(hit.start(), hit.end()).toLowerCase(Locale.ROOT).endsWith("ed")
          && (FULLY.matcher(text.substring(0, hit.end())).find()
              || THE_CELL.matcher(text.substring(hit.end())).lookingAt());
    }

    private Direction following() {
      int limit = figure().end() + ADJACENT;
      Direction found = Direction.UNKNOWN;
      for (Hit hit : hits) {
        if (hit.start() < figure().end()) {
          continue;
        }
        if (hit.start() > limit
            || !joined(hit.start())
            || hit.means("after")
            || found == Direction.UNKNOWN && parted(hit.start())) {
          break;
        }
        Direction here = directionOf(hit);
        if (here != Direction.UNKNOWN) {
          found = found == Direction.UNKNOWN || found == here ? here : Direction.BOTH;
          limit = hit.end() + 8; // "charge and discharge", "charge/discharge"
        } else if (LINKS.stream().anyMatch(hit::means)) {
          limit = hit.end() + NEAR; // "1C CC (constant current) charge"
        }
      }
      return found;
    }

    private Direction preceding() {
      int start = sentenceStart();
      Hit last = null;
      for (Hit hit : hits) {
        if (hit.start() >= start
            && hit.end() <= figure().start()
            && directionOf(hit) != Direction.UNKNOWN
            && !isPast(hit)
            && !isState(hit)) {
          if (last != null
              && hit.start() - last.end() <= 5
              && directionOf(last) != directionOf(hit)
              && !text.substring(last.end(), hit.start()).contains(",")) {
            return nextIsSame(hit) ? Direction.BOTH : directionOf(hit);
          }
          last = hit;
        }
      }
      return last == null ? Direction.UNKNOWN : directionOf(last);
    }

    /** "charge and discharge at 0.5C": no other direction follows before the figure. */
    private boolean nextIsSame(Hit hit) {
      return hits.stream()
          .noneMatch(
              h ->
                  h.start() >= hit.end()
                      && h.end() <= figure().start()
                      && directionOf(h) != Direction.UNKNOWN);
    }

    private static Direction directionOf(Hit hit) {
      boolean charge = hit.means("charge") || hit.means("constantvoltage");
      boolean discharge = hit.means("discharge");
      if (charge && discharge) {
        return Direction.BOTH;
      }
      return charge ? Direction.CHARGE : discharge ? Direction.DISCHARGE : Direction.UNKNOWN;
    }
  }
}
