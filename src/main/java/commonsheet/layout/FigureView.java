package commonsheet.layout;

import commonsheet.layout.Sentences.Direction;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What stands around one figure of a text: the words before and behind it, and its sentence. */
record FigureView(String text, List<Hit> hits, List<Figure> figures, int index) {

  private static final Pattern TO =
      Pattern.compile("(?i)\\s*(up )?(to|bis|\u00E0|hasta|\u81F3|\u5230)\\s*");

  private static final Pattern FULLY = Pattern.compile("(?i)\\bfully[ -]?\\w+$");

  private static final Pattern THE_CELL =
      Pattern.compile("(?i)\\s+(cells?|batter(y|ies)|packs?|state|condition)\\b");

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

  /** A word that belongs to a figure stands no further from it than this many characters. */
  private static final int NEAR = 14;

  /** "0.2C discharge": the word follows at once. */
  private static final int ADJACENT = 4;

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

  /** Whether a concept stands between the figure before (or the sentence's start) and this one. */
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
   * Whether a concept stands before this figure with nothing but words of the current between them.
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
                h.start() >= figure().end() && h.start() - figure().end() <= 1 && h.means(concept));
  }

  boolean justAfterText(String word) {
    int limit = Math.min(text.length(), figure().end() + NEAR);
    return text.substring(figure().end(), limit).toLowerCase(java.util.Locale.ROOT).contains(word);
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
        return Tokens.isIdeograph(text.charAt(hit.start())) ? directionOf(hit) : Direction.UNKNOWN;
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
          || (found == Direction.UNKNOWN && parted(hit.start()))) {
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
