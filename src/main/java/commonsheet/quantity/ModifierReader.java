package commonsheet.quantity;

/**
 * Reads the words before and behind a number.
 *
 * <pre>
 * before := { ( word | "(" word ")" ) { ":" | "=" | "of" | … } }    Min.: ≥
 * behind := word | "(" word ")"                                400mAh min, 1500mA (max)
 * </pre>
 */
final class ModifierReader {
  /** "Typ. approx. ≥" is about as much as is ever printed; longer runs of signs are ornament. */
  private static final int MOST_WORDS = 4;

  /** "Min. value of:" has two. */
  private static final int MOST_LINKS = 3;

  private final FoldedText text;
  private final UnitReader units;
  private final Words words = Words.standard();

  ModifierReader(FoldedText text) {
    this.text = text;
    this.units = new UnitReader(text);
  }

  /** The words at a place up to the number; empty where none stand there. */
  Modifiers before(int place) {
    Modifiers read = Modifiers.none(place);
    int at = place;
    for (int count = 0; count < MOST_WORDS && isWordStart(at); count++) {
      Phrases.Match<Words.Meaning> word = wordBefore(at);
      if (word == null) {
        break;
      }
      at = afterLinks(word.end());
      read = read.and(word.meaning(), at);
    }
    return read;
  }

  /** A word, in parentheses or not: "Weight (max.) 48 g". */
  private Phrases.Match<Words.Meaning> wordBefore(int at) {
    if (text.at(at) != '(') {
      return words.before.longest(text, at);
    }
    Phrases.Match<Words.Meaning> inside = words.before.longest(text, text.afterSpaces(at + 1));
    int close = inside == null ? -1 : text.afterSpaces(inside.end());
    return close >= 0 && text.at(close) == ')'
        ? new Phrases.Match<>(inside.meaning(), close + 1)
        : null;
  }

  private boolean isWordStart(int at) {
    return !FoldedText.isLetter(text.at(at - 1)) || !FoldedText.isLetter(text.at(at));
  }

  private int afterLinks(int place) {
    int at = text.afterSpaces(place);
    for (int links = 0; links < MOST_LINKS; links++) {
      Phrases.Match<Boolean> link = words.links.longest(text, at);
      if (link == null) {
        break;
      }
      at = text.afterSpaces(link.end());
    }
    return at;
  }

  /**
   * The words behind a figure, added to those before it. A word that labels the next number or
   * thing is left alone.
   */
  Modifiers behind(Extent extent, Modifiers before) {
    int place = extent.end();
    int at = text.afterSpaces(place);
    Modifiers nothingMore = endingAt(before, place);
    if (text.at(at) == '(') {
      Phrases.Match<Words.Meaning> inside = words.after.longest(text, text.afterSpaces(at + 1));
      int close = inside == null ? -1 : text.afterSpaces(inside.end());
      return close >= 0 && text.at(close) == ')'
          ? before.and(inside.meaning(), close + 1)
          : nothingMore;
    }
    Phrases.Match<Words.Meaning> word = words.after.longest(text, at);
    if (word == null) {
      return nothingMore;
    }
    // "3.2 Nominal" is a clause and its heading; "3.2 max" is a number with its word.
    boolean isPhrase = word.meaning().qualifier() == null && word.meaning().bound() != Bound.NONE;
    boolean mayQualify =
        before.qualifier() == null
            && (extent.unit() != null || word.meaning().bound() != Bound.NONE);
    if (isPhrase || (mayQualify && belongsToNumber(place, at, word.end()))) {
      return before.and(word.meaning(), word.end());
    }
    return nothingMore;
  }

  private static Modifiers endingAt(Modifiers modifiers, int end) {
    return new Modifiers(
        modifiers.bound(),
        modifiers.qualifier(),
        modifiers.approximate(),
        modifiers.between(),
        end);
  }

  /** Whether a qualifier behind a number speaks of that number rather than of what comes next. */
  private boolean belongsToNumber(int numberEnd, int wordStart, int wordEnd) {
    if (text.printed(numberEnd, wordStart).indexOf('\n') >= 0) {
      return false;
    }
    int next = text.afterSpaces(wordEnd);
    char c = text.at(next);
    if (c == ':' || c == '=') {
      return false;
    }
    if (FoldedText.isDigit(c)) {
      return isQualifiedBehind(next);
    }
    boolean thing = FoldedText.isLetter(c) || FoldedText.isIdeograph(c);
    boolean newLine = text.printed(wordEnd, next).indexOf('\n') >= 0;
    return !thing || newLine || words.followers.longest(text, next) != null;
  }

  /** "400mAh min 410mAh typ.": the next number has its word behind it, so this one has, too. */
  private boolean isQualifiedBehind(int number) {
    int at = number;
    while (FoldedText.isDigit(text.at(at)) || text.at(at) == '.' || text.at(at) == ',') {
      at++;
    }
    PrintedUnit unit = units.read(at);
    int behind = text.afterSpaces(unit == null ? at : unit.end());
    Phrases.Match<Words.Meaning> word = words.after.longest(text, behind);
    return word != null && word.meaning().qualifier() != null;
  }
}
