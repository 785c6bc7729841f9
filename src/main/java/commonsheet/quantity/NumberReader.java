package commonsheet.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads one number without a sign: digits in groups, the last of which may be decimals.
 *
 * <pre>
 * number  := [ "." ] digits { separator digits }
 * separator := "." | "," | "'" | thin space
 * </pre>
 */
final class NumberReader {
  /** Longer runs of digits are serial numbers. */
  private static final int MOST_DIGITS = 15;

  /** Longer chains are lists or addresses, of which the beginning tells enough. */
  private static final int MOST_GROUPS = 6;

  private static final int GROUP = 3;
  private static final String SEPARATORS = ".,'\u2009";

  private final FoldedText text;
  private final NumberStyle style;

  NumberReader(FoldedText text, NumberStyle style) {
    this.text = text;
    this.style = style;
  }

  /**
   * The number at a place; null where none is, or where the digits are a section number or a code.
   */
  PrintedNumber read(int place) {
    if (text.at(place) == '.') {
      return leadingPoint(place);
    }
    Groups groups = groups(place);
    if (groups.count() == 0 || groups.isTooLong()) {
      return null;
    }
    if (groups.count() == 1) {
      return brokenDecimal(groups);
    }
    return groups.count() == 2 ? oneSeparator(groups) : severalSeparators(groups);
  }

  /** ".5" is 0.5 where nothing stands before the point. */
  private PrintedNumber leadingPoint(int place) {
    char before = text.at(place - 1);
    Groups decimals = groups(place + 1);
    boolean free =
        before == '\0' || FoldedText.isSpace(before) || "(~:<>≤≥±+-=/".indexOf(before) >= 0;
    if (!free || decimals.count() != 1 || decimals.isTooLong()) {
      return null;
    }
    return decimal("0", decimals.digits(0), decimals.end());
  }

  /** A plain integer; "0. 02" is a decimal that the line breaking has torn. */
  private PrintedNumber brokenDecimal(Groups groups) {
    int end = groups.end();
    if (groups.digits(0).equals("0") && text.at(end) == '.' && text.at(end + 1) == ' ') {
      Groups decimals = groups(end + 2);
      if (decimals.count() == 1 && !decimals.isTooLong()) {
        return decimal("0", decimals.digits(0), decimals.end());
      }
    }
    boolean serial = groups.digits(0).length() > 1 && groups.digits(0).charAt(0) == '0';
    return serial ? null : integer(groups, 1);
  }

  private PrintedNumber oneSeparator(Groups groups) {
    char separator = groups.separator(0);
    String whole = groups.digits(0);
    String rest = groups.digits(1);
    boolean couldBeThousands =
        rest.length() == GROUP && whole.length() <= GROUP && whole.charAt(0) != '0';
    if (separator != '.' && separator != ',') {
      return couldBeThousands ? joined(groups) : integer(groups, 1);
    }
    PrintedNumber decimal = decimal(whole, rest, groups.end());
    if (!couldBeThousands) {
      return decimal;
    }
    BigDecimal thousands = joined(groups).value();
    return style.decimalMark() == separator
        ? new PrintedNumber(decimal.value(), thousands, groups.end())
        : new PrintedNumber(thousands, decimal.value(), groups.end());
  }

  private PrintedNumber severalSeparators(Groups groups) {
    char last = groups.separator(groups.count() - 2);
    boolean same = groups.separatorsAre(groups.separator(0), groups.count() - 1);
    if (same && groups.areThousands(groups.count())) {
      return joined(groups);
    }
    boolean thousandsThenDecimals =
        (last == '.' || last == ',')
            && groups.separator(0) != last
            && groups.separatorsAre(groups.separator(0), groups.count() - 2)
            && groups.areThousands(groups.count() - 1);
    if (thousandsThenDecimals) {
      return decimal(
          groups.joined(groups.count() - 1), groups.digits(groups.count() - 1), groups.end());
    }
    // 6.1.1 is a section; 20,25,30 is a list.
    return groups.separator(0) == '.' ? null : integer(groups, 1);
  }

  private static PrintedNumber integer(Groups groups, int count) {
    return new PrintedNumber(new BigDecimal(groups.joined(count)), null, groups.endOf(count - 1));
  }

  private static PrintedNumber joined(Groups groups) {
    return integer(groups, groups.count());
  }

  private static PrintedNumber decimal(String whole, String decimals, int end) {
    return new PrintedNumber(new BigDecimal(whole + "." + decimals), null, end);
  }

  private Groups groups(int place) {
    Groups groups = new Groups();
    // In the list 20,25,30 the last two are no 25.30.
    boolean inList = text.at(place - 1) == ',' && FoldedText.isDigit(text.at(place - 2));
    String separators = inList ? SEPARATORS.replace(",", "") : SEPARATORS;
    int at = place;
    while (groups.count() < MOST_GROUPS && FoldedText.isDigit(text.at(at))) {
      int end = at;
      while (FoldedText.isDigit(text.at(end))) {
        end++;
      }
      groups.add(at, end);
      at = separators.indexOf(text.at(end)) >= 0 ? end + 1 : end;
    }
    return groups;
  }

  /** Runs of digits with one separator between each two. */
  private final class Groups {
    private final List<String> runs = new ArrayList<>();
    private final List<Integer> ends = new ArrayList<>();

    void add(int start, int end) {
      StringBuilder digits = new StringBuilder();
      for (int i = start; i < end; i++) {
        digits.append(text.at(i));
      }
      runs.add(digits.toString());
      ends.add(end);
    }

    int count() {
      return runs.size();
    }

    String digits(int group) {
      return runs.get(group);
    }

    int endOf(int group) {
      return ends.get(group);
    }

    int end() {
      return endOf(count() - 1);
    }

    char separator(int afterGroup) {
      return text.at(endOf(afterGroup));
    }

    boolean separatorsAre(char wanted, int count) {
      for (int i = 0; i < count; i++) {
        if (separator(i) != wanted) {
          return false;
        }
      }
      return true;
    }

    boolean areThousands(int count) {
      for (int i = 1; i < count; i++) {
        if (digits(i).length() != GROUP) {
          return false;
        }
      }
      return digits(0).length() <= GROUP && digits(0).charAt(0) != '0';
    }

    String joined(int count) {
      return String.join("", runs.subList(0, count));
    }

    boolean isTooLong() {
      return runs.stream().anyMatch(run -> run.length() > MOST_DIGITS);
    }
  }
}
