package commonsheet.quantity;

/**
 * Steps over digits that are no figures: dates, telephone numbers, section numbers, model names.
 */
final class CodeSkipper {
  private final FoldedText text;

  CodeSkipper(FoldedText text) {
    this.text = text;
  }

  /**
   * The end of the date or telephone number that begins at a place; the place itself where none
   * does.
   */
  int afterCode(int place) {
    int digits = text.at(place) == '+' ? place + 1 : place;
    if (!FoldedText.isDigit(text.at(digits)) || FoldedText.isDigit(text.at(place - 1))) {
      return place;
    }
    int end = Math.max(afterJoinedRuns(digits), afterChineseDate(digits));
    return end > digits ? end : place;
  }

  /** The next place where something may begin, behind a place where nothing could be read. */
  int afterUnread(int place) {
    if (!FoldedText.isDigit(text.at(place))) {
      return place + 1;
    }
    int at = place;
    while (FoldedText.isDigit(text.at(at))
        || FoldedText.isLetter(text.at(at))
        || (text.at(at) == '.' && FoldedText.isDigit(text.at(at + 1)))) {
      at++;
    }
    return at;
  }

  /** Three or more runs of digits: 2015-08-27, 27.08.2015 with a year, 86-755-12345678. */
  private int afterJoinedRuns(int place) {
    int end = afterDigits(place);
    char joint = text.at(end);
    if (joint != '-' && joint != '/' && joint != '.') {
      return place;
    }
    int runs = 1;
    boolean hasYear = end - place == 4;
    while (text.at(end) == joint && FoldedText.isDigit(text.at(end + 1))) {
      int next = afterDigits(end + 1);
      hasYear |= next - end - 1 == 4;
      end = next;
      runs++;
    }
    boolean whole = !FoldedText.isLetter(text.at(end));
    return runs >= 3 && whole && (joint == '-' || hasYear) ? end : place;
  }

  /** 2015年8月27日, 8月27日. */
  private int afterChineseDate(int place) {
    int end = afterPart(place, '年');
    int month = afterPart(end, '月');
    if (month == end) {
      return place;
    }
    return afterPart(month, '日');
  }

  private int afterPart(int place, char mark) {
    int end = afterDigits(text.afterSpaces(place));
    int at = text.afterSpaces(end);
    return end > place && FoldedText.isDigit(text.at(end - 1)) && text.at(at) == mark
        ? at + 1
        : place;
  }

  private int afterDigits(int place) {
    int at = place;
    while (FoldedText.isDigit(text.at(at))) {
      at++;
    }
    return at;
  }
}
