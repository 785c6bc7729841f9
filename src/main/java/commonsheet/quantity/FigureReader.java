package commonsheet.quantity;

import java.math.BigDecimal;

/**
 * Reads the one figure that begins at a place.
 *
 * <pre>
 * figure := before extent behind
 * </pre>
 */
final class FigureReader {
  /** Signs that can begin a figure besides digits and letters. */
  private static final String FIRST_SIGNS = "+-.(≥≤<>=≈~";

  /** A label glued to a number must look like a word: "voltage3.0V" but not "R1A". */
  private static final int SHORTEST_LABEL = 3;

  /** More digits behind letters are a model name. */
  private static final int LONGEST_LABELLED = 4;

  private final FoldedText text;
  private final ExtentReader extents;
  private final ModifierReader modifiers;

  FigureReader(FoldedText text, NumberStyle style) {
    this.text = text;
    this.extents = new ExtentReader(text, style);
    this.modifiers = new ModifierReader(text);
  }

  /**
   * The figure that begins at a place, or null.
   *
   * @param endOfPrevious where the figure before it ended: the V before 2000 in "3.7V2000mAh" is a
   *     unit, no name
   */
  Figure read(int place, int endOfPrevious) {
    if (!mayBegin(place)) {
      return null;
    }
    Modifiers before = modifiers.before(place);
    int start = before.areEmpty() ? place : before.end();
    Extent extent = extent(start, before.between());
    if (extent == null
        || (before.areEmpty() && place > endOfPrevious && isPartOfName(start, extent))) {
      return null;
    }
    return figure(place, extent, modifiers.behind(extent, before));
  }

  private boolean mayBegin(int place) {
    char c = text.at(place);
    char before = text.at(place - 1);
    if (FoldedText.isDigit(c)) {
      return !FoldedText.isDigit(before) && !isLoneTolerance(place);
    }
    if (FoldedText.isLetter(c)) {
      return !FoldedText.isLetter(before) && !FoldedText.isDigit(before);
    }
    return FIRST_SIGNS.indexOf(c) >= 0 || FoldedText.isIdeograph(c);
  }

  /** "±0.5 mm" without a number before it is no figure. */
  private boolean isLoneTolerance(int place) {
    int at = place - 1;
    while (FoldedText.isSpace(text.at(at))) {
      at--;
    }
    return text.at(at) == '±';
  }

  private Extent extent(int place, boolean afterBetween) {
    char c = text.at(place);
    if ((c == '-' || c == '+') && isJoint(place)) {
      return null;
    }
    if (c == '-' && FoldedText.isSpace(text.at(place + 1))) {
      return extents.readApartFromSign(place);
    }
    return extents.read(place, afterBetween);
  }

  /** A hyphen directly behind a letter, a digit or a closed bracket joins; it is no sign. */
  private boolean isJoint(int place) {
    char before = text.at(place - 1);
    return FoldedText.isLetter(before)
        || FoldedText.isDigit(before)
        || ")]%℃℉°Ω".indexOf(before) >= 0;
  }

  /** Whether the digits belong to a name such as QT203040, X1234-3C or Test2. */
  private boolean isPartOfName(int place, Extent extent) {
    if (!FoldedText.isDigit(text.at(place))) {
      return false;
    }
    int nameEnd = place;
    boolean joined = "-+_".indexOf(text.at(place - 1)) >= 0;
    if (joined) {
      nameEnd = place - 1;
    }
    int letters = nameEnd;
    while (FoldedText.isLetter(text.at(letters - 1))) {
      letters--;
    }
    if (joined) {
      boolean name = letters < nameEnd && isWhole(extent);
      return (name || isCode(nameEnd)) && !hasFullUnit(extent);
    }
    if (letters == place) {
      return false;
    }
    return !isLabelled(letters, place, extent);
  }

  private static boolean isWhole(Extent extent) {
    return extent.value() == null || extent.value().scale() == 0;
  }

  /** Whether letters and digits in one run end at a place: "X1234-" or "IFR26650-". */
  private boolean isCode(int end) {
    boolean letter = false;
    boolean digit = false;
    for (int at = end - 1; isInRun(text.at(at)); at--) {
      letter |= FoldedText.isLetter(text.at(at));
      digit |= FoldedText.isDigit(text.at(at));
    }
    return letter && digit;
  }

  private static boolean isInRun(char c) {
    return FoldedText.isLetter(c) || FoldedText.isDigit(c) || c == '-' || c == '_';
  }

  /** Whether the letters before a number are its label, which the unit directly behind it shows. */
  private boolean isLabelled(int letters, int place, Extent extent) {
    PrintedUnit unit = extent.unit();
    int digits = place;
    while (FoldedText.isDigit(text.at(digits))) {
      digits++;
    }
    if (unit == null
        || FoldedText.isSpace(text.at(unit.start() - 1))
        || FoldedText.isDigit(text.at(letters - 1))
        || digits - place > LONGEST_LABELLED) {
      return false;
    }
    char last = text.at(place - 1);
    boolean word = place - letters >= SHORTEST_LABEL && Character.isLowerCase(last);
    return word || hasFullUnit(extent);
  }

  /** A unit of more than one letter is not the tail of a model name. */
  private static boolean hasFullUnit(Extent extent) {
    return extent.unit() != null && !extent.unit().isOneLetter();
  }

  private Figure figure(int start, Extent extent, Modifiers words) {
    return new Figure(
        start,
        words.end(),
        text.printed(start, words.end()),
        number(extent.value()),
        number(extent.low()),
        number(extent.high()),
        words.bound(),
        words.qualifier(),
        words.approximate(),
        extent.unit() == null ? null : extent.unit().unit(),
        extent.ambiguous());
  }

  private static Double number(BigDecimal number) {
    // Adding zero keeps "-0" from becoming the negative zero of floating point.
    return number == null ? null : number.doubleValue() + 0.0;
  }
}
