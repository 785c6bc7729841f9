package commonsheet.chart.axis;

import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds the numbers among the words around a plot. */
final class TickLabels {
  /** Parts of one number stand closer than this share of their height. */
  private static final double CLOSE = 0.45;

  private final boolean decimalComma;

  TickLabels(boolean decimalComma) {
    this.decimalComma = decimalComma;
  }

  /**
   * Every number, words that belong to one number joined. Numbers that stand on their side or
   * aslant, as where there was no room for them, are each one word.
   */
  List<TickLabel> among(List<Word> words) {
    List<Word> level = new ArrayList<>();
    for (Word word : words) {
      if (word.turn() == 0) {
        level.addAll(apart(word));
      }
    }
    List<TickLabel> labels = new ArrayList<>();
    for (Word word : words) {
      TickLabel turned = word.turn() == 0 ? null : label(word.text(), List.of(word), List.of(0));
      if (turned != null) {
        labels.add(turned);
      }
    }
    level.sort(Comparator.comparingDouble(word -> word.box().x()));
    boolean[] used = new boolean[level.size()];
    for (int i = 0; i < level.size(); i++) {
      if (!used[i]) {
        TickLabel label = startingWith(level, i, used);
        if (label != null) {
          labels.add(label);
        }
      }
    }
    return labels;
  }

  /** The longest number that begins with a word and goes on in the words close behind it. */
  private TickLabel startingWith(List<Word> level, int first, boolean[] used) {
    List<Integer> run = new ArrayList<>(List.of(first));
    StringBuilder text = new StringBuilder(level.get(first).text());
    TickLabel best = label(text.toString(), level, run);
    int taken = best == null ? 0 : 1;
    while (run.size() < 4) {
      int next = behind(level, run.get(run.size() - 1), used);
      if (next < 0) {
        break;
      }
      Word word = level.get(next);
      boolean thousands =
          word.text().matches("[0-9]{3}")
              && text.toString().matches("[-+−]?[1-9][0-9]{0,2}( [0-9]{3})*")
              && gap(level, run.get(run.size() - 1), next) > 0.1;
      if (!thousands && word.raised() <= 0 && !goesOn(text.toString(), word.text())) {
        break;
      }
      run.add(next);
      String joint = word.raised() > 0 ? "^" : thousands ? " " : "";
      text.append(joint).append(word.text());
      TickLabel longer = label(text.toString(), level, run);
      if (longer != null) {
        best = longer;
        taken = run.size();
      }
    }
    for (int i = 0; i < taken; i++) {
      used[run.get(i)] = true;
    }
    return best;
  }

  /** Two numbers side by side stay two, unless one of them is only a part of a number. */
  private static boolean goesOn(String text, String next) {
    boolean startsWithDigit = Character.isDigit(next.charAt(0));
    return !startsWithDigit || text.matches("[-+−–]|.*[.,]");
  }

  private TickLabel label(String text, List<Word> level, List<Integer> run) {
    List<Word> words = run.stream().map(level::get).toList();
    boolean recognised = words.stream().anyMatch(Word::recognised);
    TickNumber number = TickNumber.of(recognised ? mended(text) : text, decimalComma);
    if (number == null) {
      return null;
    }
    Box box = Box.around(words.stream().map(Word::box).toList());
    return new TickLabel(number.value(), number.unit(), text, box, words);
  }

  /** A tick mark seen as a dash behind the number, a nought seen as a letter. */
  private static String mended(String text) {
    String bare = text.replaceAll("(?<=\\d)\\s*[-_.·|'~—]+$", "");
    return bare.matches("[oO]") ? "0" : bare;
  }

  private static int behind(List<Word> level, int index, boolean[] used) {
    Box box = level.get(index).box();
    for (int i = index + 1; i < level.size(); i++) {
      Box other = level.get(i).box();
      double gap = (other.x() - box.right()) / box.height();
      boolean raised = level.get(i).raised() > 0;
      if (!used[i] && gap > -0.3 && gap < CLOSE && (raised || box.sharedHeight(other) > 0.6)) {
        return i;
      }
    }
    return -1;
  }

  private static double gap(List<Word> level, int left, int right) {
    Box box = level.get(left).box();
    return (level.get(right).box().x() - box.right()) / box.height();
  }

  /** The words of a run that holds several, each with its share of the width. */
  private static List<Word> apart(Word word) {
    String text = word.text().strip();
    List<String> glued = GluedNumbers.of(text);
    boolean single = !text.contains(" ") || TickNumber.of(text, false) != null;
    if (single && glued.isEmpty()) {
      return List.of(word);
    }
    List<Word> parts = new ArrayList<>();
    double perCharacter = word.box().width() / word.text().length();
    int at = 0;
    List<String> pieces = glued.isEmpty() ? List.of(word.text().split(" ", -1)) : glued;
    for (String part : pieces) {
      if (!part.isEmpty()) {
        Box box =
            new Box(
                word.box().x() + at * perCharacter,
                word.box().y(),
                part.length() * perCharacter,
                word.box().height());
        parts.add(
            new Word(
                part,
                box,
                word.size(),
                word.bold(),
                word.turn(),
                word.raised(),
                word.recognised(),
                word.confidence()));
      }
      at += part.length() + (glued.isEmpty() ? 1 : 0);
    }
    return parts;
  }
}
