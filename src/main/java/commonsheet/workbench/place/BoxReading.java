package commonsheet.workbench.place;

import commonsheet.quantity.Bound;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.FigurePrinter;
import commonsheet.quantity.NumberStyle;
import commonsheet.quantity.Qualifier;
import commonsheet.quantity.QuantityKind;
import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * What the words in a drawn box say. A proposal for the person who drew it: what can be read in two
 * ways is said to be so, and what is no figure of the quantity is left out.
 *
 * @param text the words from line to line
 * @param typed the figure as a person would type it; null where there is none
 * @param statistic minimum, maximum, typical, nominal, rated or standard, where words or signs at
 *     the figure say so; otherwise null
 * @param quantity the name of the one that was asked for, or null
 * @param doubt what to look at, in a sentence; null where there is nothing
 */
record BoxReading(String text, String typed, String statistic, String quantity, String doubt) {
  /** Share of a word's own area that has to be in the box. */
  private static final double WITHIN = 0.5;

  /** Share of the height that words of one line have in common. */
  private static final double ONE_LINE = 0.5;

  /**
   * Reads a box.
   *
   * @param words of the page
   * @param style of the sheet's numbers
   * @param kind the quantity that is looked for; null where it is not known yet
   */
  static BoxReading of(List<Word> words, Box box, NumberStyle style, QuantityKind kind) {
    String text = text(words.stream().filter(word -> isIn(word.box(), box)).toList());
    String name = kind == null ? null : kind.name();
    if (text.isEmpty()) {
      return new BoxReading("", null, null, name, "There are no words in this box.");
    }
    List<Figure> figures =
        new FigureParser(style).find(text).stream().filter(figure -> fits(figure, kind)).toList();
    if (figures.isEmpty()) {
      String what = kind == null ? "a figure with a unit" : kind.label().toLowerCase(Locale.ROOT);
      return new BoxReading(text, null, null, name, "The words do not say " + what + ".");
    }
    Figure first = figures.get(0);
    return new BoxReading(
        text, FigurePrinter.print(bare(first)), statistic(first), name, doubt(figures));
  }

  private static boolean fits(Figure figure, QuantityKind kind) {
    if (kind == null) {
      return figure.unit() != null;
    }
    Dimension dimension = figure.unit() == null ? null : figure.unit().dimension();
    return dimension == null ? kind.unit().equals("1") : dimension.equals(kind.dimension());
  }

  private static String doubt(List<Figure> figures) {
    if (figures.get(0).ambiguous()) {
      return "This can be read in two ways; compare it with the sheet.";
    }
    return figures.size() > 1
        ? "The box holds " + figures.size() + " figures; this is the first one."
        : null;
  }

  /** The figure without the words that its statistic says. */
  private static Figure bare(Figure f) {
    return new Figure(
        f.start(),
        f.end(),
        f.text(),
        f.value(),
        f.low(),
        f.high(),
        Bound.NONE,
        null,
        false,
        f.unit(),
        f.ambiguous());
  }

  private static String statistic(Figure figure) {
    Qualifier own = figure.qualifier();
    if (own != null) {
      return own.name().toLowerCase(Locale.ROOT);
    }
    return switch (figure.bound()) {
      case AT_LEAST -> "minimum";
      case AT_MOST -> "maximum";
      case NONE -> null;
    };
  }

  private static boolean isIn(Box word, Box box) {
    double width = Math.min(word.right(), box.right()) - Math.max(word.x(), box.x());
    double height = Math.min(word.bottom(), box.bottom()) - Math.max(word.y(), box.y());
    return width > 0
        && height > 0
        && width * height >= WITHIN * Math.max(1e-6, word.width() * word.height());
  }

  /** Line by line; within a line from left to right. */
  private static String text(List<Word> words) {
    List<Word> rest = new ArrayList<>(words);
    rest.sort(Comparator.comparingDouble(word -> word.box().centreY()));
    List<String> lines = new ArrayList<>();
    while (!rest.isEmpty()) {
      Box first = rest.get(0).box();
      List<Word> line =
          rest.stream()
              .filter(word -> word.box().sharedHeight(first) > ONE_LINE)
              .sorted(Comparator.comparingDouble(word -> word.box().x()))
              .toList();
      rest.removeAll(line);
      lines.add(String.join(" ", line.stream().map(Word::text).toList()));
    }
    return String.join(" ", lines);
  }
}
