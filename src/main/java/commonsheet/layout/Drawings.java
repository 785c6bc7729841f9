package commonsheet.layout;

import commonsheet.quantity.Bound;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.record.Conditions;
import commonsheet.record.Method;
import commonsheet.record.Statistic;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Dimensions lettered on a drawing: figures with a tolerance or a limit that stand by themselves.
 * Which dimension each is follows from the size in the model's name (four digits and more: diameter
 * and height; six: thickness in tenths of a millimetre, width, length) or from a diameter sign.
 * Such a value is always unsure.
 */
final class Drawings {
  private static final Pattern POUCH = Pattern.compile("(?<!\\d)(\\d{2})(\\d{2})(\\d{2})(?!\\d)");
  private static final Pattern DIAMETER = Pattern.compile("[\u00D8\u2300\u03C6\u03A6\u00F8\u2205]");
  private static final Pattern LIMIT =
      Pattern.compile("(?i)max|\u2264|\u2266|<|m\u00E1x|\u6700\u5927");
  private static final String DOUBT =
      "read from a drawing; which dimension it is follows from the size in the model's name";

  /**
   * How far a printed dimension may lie from the size in the name: swelling, wrapping, rounding.
   * Common practice, no source.
   */
  private record Slot(String quantity, double nominal, double below, double above) {
    boolean takes(double value) {
      return value >= nominal - below && value <= nominal + above;
    }
  }

  private final Figures parser;

  Drawings(Figures parser) {
    this.parser = parser;
  }

  /** The dimensions that the sheet's drawings give the model, each at most once. */
  List<Candidate> read(Sheet sheet, String model, String sizeCode) {
    List<Slot> slots = slots(model, sizeCode);
    Map<String, Candidate> nearest = new LinkedHashMap<>();
    List<Candidate> found = new ArrayList<>();
    for (Page page : sheet.pages()) {
      for (List<Word> run : runs(page)) {
        Passage text = Passage.ofWords(page.number(), run);
        Optional<Figure> figure = dimension(text);
        if (figure.isEmpty()) {
          continue;
        }
        if (DIAMETER.matcher(text.text()).find()) {
          found.add(candidate(text, figure.get(), "diameter", "read from a drawing"));
          continue;
        }
        for (Slot slot : slots) {
          if (slot.takes(figure.get().value())) {
            Candidate candidate = candidate(text, figure.get(), slot.quantity(), DOUBT);
            nearest.merge(slot.quantity(), candidate, (a, b) -> nearer(slot, a, b));
          }
        }
      }
    }
    found.addAll(nearest.values());
    return found;
  }

  private static Candidate nearer(Slot slot, Candidate a, Candidate b) {
    return Math.abs(b.value() - slot.nominal()) < Math.abs(a.value() - slot.nominal()) ? b : a;
  }

  private static List<Slot> slots(String model, String sizeCode) {
    if (sizeCode != null && sizeCode.length() == 5) {
      double diameter = Integer.parseInt(sizeCode.substring(0, 2));
      double height = Integer.parseInt(sizeCode.substring(2)) / 10.0;
      return List.of(
          new Slot("diameter", diameter, 0.3, 1.2), new Slot("height", height, 1.2, 1.6));
    }
    Matcher pouch = POUCH.matcher(model == null ? "" : model);
    if (!pouch.find()) {
      return List.of();
    }
    return List.of(
        new Slot("thickness", Integer.parseInt(pouch.group(1)) / 10.0, 0.5, 0.8),
        new Slot("width", Integer.parseInt(pouch.group(2)), 1, 1.8),
        new Slot("length", Integer.parseInt(pouch.group(3)), 1.5, 4));
  }

  /**
   * The one figure of a run that is nothing but a dimension: with a tolerance or a limit, in
   * millimetres or bare.
   */
  private Optional<Figure> dimension(Passage text) {
    List<Figure> figures = parser.find(text.text());
    if (figures.size() != 1) {
      return Optional.empty();
    }
    Figure figure = figures.get(0);
    boolean length = figure.unit() == null || figure.unit().dimension() == Dimension.LENGTH;
    boolean limited =
        figure.low() != null
            || (figure.bound() == Bound.AT_MOST && LIMIT.matcher(figure.text()).find());
    String rest = text.text().substring(0, figure.start()) + text.text().substring(figure.end());
    boolean alone = rest.chars().filter(Character::isLetter).count() <= 2;
    return length && limited && alone && figure.value() != null
        ? Optional.of(figure)
        : Optional.empty();
  }

  private static Candidate candidate(Passage text, Figure figure, String quantity, String doubt) {
    Figure millimetres = figure.unit() == null ? figure : figure.in("mm");
    Statistic statistic =
        switch (figure.bound()) {
          case AT_MOST -> Statistic.MAXIMUM;
          case AT_LEAST -> Statistic.MINIMUM;
          default -> null;
        };
    List<String> doubts = new ArrayList<>(List.of(doubt));
    if (figure.unit() == null) {
      doubts.add("no unit is printed; mm is taken");
    }
    return new Candidate(
        quantity,
        statistic,
        new Candidate.Amount(millimetres.value(), millimetres.low(), millimetres.high()),
        null,
        Conditions.NONE,
        new Candidate.Place(
            text.page(),
            text.box(),
            text.shown(),
            Method.TEXT_LINE,
            "drawing/" + quantity,
            text.recognisedConfidence(0, text.text().length())),
        true,
        null,
        null,
        doubts);
  }

  // ---- words that stand together, whichever way they are turned ----

  private static List<List<Word>> runs(Page page) {
    List<Word> words = new ArrayList<>(page.words());
    words.sort(
        Comparator.comparingInt(Word::turn)
            .thenComparingDouble(Drawings::across)
            .thenComparingDouble(Drawings::along));
    List<List<Word>> runs = new ArrayList<>();
    List<Word> left = new ArrayList<>(words);
    while (!left.isEmpty()) {
      List<Word> run = new ArrayList<>(List.of(left.remove(0)));
      boolean grown = true;
      while (grown) {
        grown = false;
        for (int i = 0; i < left.size() && !grown; i++) {
          Word next = left.get(i);
          if (run.stream().anyMatch(w -> follows(w, next) || follows(next, w))) {
            run.add(left.remove(i));
            grown = true;
          }
        }
      }
      run.sort(Comparator.comparingDouble(Drawings::along).thenComparingDouble(Drawings::across));
      runs.add(run);
    }
    return runs;
  }

  /** Whether a word follows another on its line, or as the upper or lower part of a tolerance. */
  private static boolean follows(Word word, Word next) {
    if (word.turn() != next.turn()) {
      return false;
    }
    double size = Math.max(word.size(), next.size());
    double gap = along(next) - (along(word) + extent(word));
    return gap > -0.3 * size
        && gap < 0.8 * size
        && Math.abs(across(word) - across(next)) < 0.7 * size;
  }

  private static double along(Word word) {
    return switch (word.turn()) {
      case 90 -> -word.box().bottom();
      case 180 -> -word.box().right();
      case 270 -> word.box().y();
      default -> word.box().x();
    };
  }

  private static double across(Word word) {
    return word.turn() == 90 || word.turn() == 270 ? word.box().centreX() : word.box().centreY();
  }

  private static double extent(Word word) {
    return word.turn() == 90 || word.turn() == 270 ? word.box().height() : word.box().width();
  }
}
