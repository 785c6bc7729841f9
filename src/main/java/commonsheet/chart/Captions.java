package commonsheet.chart;

import commonsheet.chart.text.ChartText;
import commonsheet.chart.text.ChartWords;
import commonsheet.chart.text.ConditionReader;
import commonsheet.chart.text.Context;
import commonsheet.chart.text.Phrase;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.NumberStyle;
import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Finds the heading of a chart and the lines by it that state conditions. */
final class Captions {
  /** Numbers of figures and clauses before a heading. */
  private static final Pattern NUMBERED =
      Pattern.compile("(?i)^(fig(ure)?\\.?|abb\\.?|chart|graph|图|圖|図|gráfico|[0-9]+\\.).*");

  /** A heading stands no farther from the chart than this, in heights of its line. */
  private static final double FARTHEST = 7;

  /** Without a heading, conditions stand no farther from the chart than this. */
  private static final double NEAR = 4;

  /** Words of a heading stand closer than this. */
  private static final double HEADING_GAP = 1;

  /** Condition lines follow each other no farther than this. */
  private static final double FOLLOWING = 1.2;

  private final Box whole;
  private final List<Phrase> lines;
  private final ConditionReader reader;
  private final FigureParser figures;
  private final ChartWords words = ChartWords.standard();

  /**
   * @param whole the plot with the numbers and titles of its axes
   * @param lines the lines around and in the plot that are neither
   */
  Captions(Box whole, List<Phrase> lines, NumberStyle style) {
    this.whole = whole;
    this.lines = lines;
    this.reader = new ConditionReader(style);
    this.figures = new FigureParser(style);
  }

  /**
   * What stands by a chart.
   *
   * @param title as printed, or null
   * @param said the conditions in it and in the lines
   * @param lines the condition lines, in reading order
   */
  record Read(String title, ConditionReader.Said said, Set<Phrase> lines) {}

  /** Title and conditions. */
  Read read() {
    Phrase title = title();
    Box reach = reach(title);
    Set<Phrase> conditions = new LinkedHashSet<>();
    ConditionReader.Said said = ConditionReader.Said.NOTHING;
    Context context = Context.UNSAID;
    Phrase above = null;
    for (Phrase line : lines) {
      if (line.turn() != 0 || line.equals(title) || !isBy(line, title, reach)) {
        continue;
      }
      boolean goesOn = above != null && isNextLine(above, line) && hasFigures(line);
      if (isConditionLine(line) || goesOn) {
        context = goesOn ? context : Context.UNSAID;
        said = said.and(reader.read(line.text(), context));
        context = reader.contextAfter(line.text(), context);
        conditions.add(line);
        above = line;
      }
    }
    if (title != null) {
      said = said.and(reader.read(title.text(), Context.UNSAID));
    }
    return new Read(title == null ? null : own(title), said, conditions);
  }

  /** Speaks of charge or discharge, of an end or a rest, and says so with figures. */
  private boolean isConditionLine(Phrase line) {
    String lower = ChartText.lower(line.text());
    boolean speaks =
        words.contexts().isIn(lower)
            || (words.ends().isIn(lower) && lower.length() > 12)
            || (words.measures().isIn(lower) && lower.contains(":"));
    return speaks && hasFigures(line) && !isHeading(line);
  }

  /** "Discharge characteristics at 25 °C" is a heading, though it has a figure. */
  private boolean isHeading(Phrase line) {
    String lower = ChartText.lower(line.text());
    boolean larger = line.lineHeight() > 1.25 * medianHeight();
    boolean outside = line.box().bottom() < whole.y() || line.box().y() > whole.bottom();
    boolean oneFigure = figures.find(ChartText.folded(line.text())).size() <= 1;
    return !lower.contains(":")
        && outside
        && (larger || oneFigure || NUMBERED.matcher(lower).matches());
  }

  private double medianHeight() {
    List<Double> heights =
        lines.stream().filter(l -> l.turn() == 0).map(Phrase::lineHeight).sorted().toList();
    return heights.isEmpty() ? 0 : heights.get(heights.size() / 2);
  }

  private boolean hasFigures(Phrase line) {
    return figures.find(ChartText.folded(line.text())).stream().anyMatch(f -> f.unit() != null);
  }

  private static boolean isNextLine(Phrase above, Phrase line) {
    double gap = line.box().y() - above.box().bottom();
    return gap > -0.5 * line.lineHeight()
        && gap < 0.8 * line.lineHeight()
        && above.box().sharedWidth(line.box()) > 0.3;
  }

  /** The chart with its heading and the condition lines that follow each other away from it. */
  private Box reach(Phrase title) {
    Box reach = title == null ? whole : whole.union(title.box());
    for (boolean grown = true; grown; ) {
      Box before = reach;
      for (Phrase line : lines) {
        double away = Math.max(before.y() - line.box().bottom(), line.box().y() - before.bottom());
        boolean next = away < (before.equals(whole) ? NEAR : FOLLOWING) * line.lineHeight();
        boolean beyondTitle = title != null && line.box().bottom() < title.box().y();
        if (line.turn() == 0
            && next
            && !beyondTitle
            && line.box().sharedWidth(whole) > 0.3
            && isConditionLine(line)) {
          reach = reach.union(line.box());
        }
      }
      grown = !reach.equals(before);
    }
    return reach;
  }

  /** The part of a heading's line that is the chart's, without words of a column beside it. */
  private String own(Phrase title) {
    Phrase own = null;
    for (Phrase part : Phrase.among(title.words(), HEADING_GAP, List.of())) {
      boolean over = part.box().right() > whole.x() && part.box().x() < whole.right();
      if (over && (own == null || unlikely(part) < unlikely(own))) {
        own = part;
      }
    }
    return own == null ? title.text() : own.text();
  }

  /** In the plot, or over it up to its heading, or close over or under it. */
  private boolean isBy(Phrase line, Phrase title, Box reach) {
    double away = Math.max(reach.y() - line.box().bottom(), line.box().y() - reach.bottom());
    boolean underHeading =
        title != null
            && title.box().bottom() < whole.y()
            && line.box().y() >= title.box().y()
            && line.box().y() < whole.y();
    boolean level = line.box().sharedWidth(whole) > 0.3;
    boolean beyond =
        title != null
            && title.box().bottom() < whole.y()
            && line.box().bottom() < title.box().y() + 1;
    if (beyond) {
      return false;
    }
    return away <= 0 || (level && (underHeading || away < NEAR * line.lineHeight()));
  }

  private Phrase title() {
    List<Phrase> near = new ArrayList<>();
    for (Phrase line : lines) {
      boolean outside = line.box().centreY() < whole.y() || line.box().centreY() > whole.bottom();
      boolean over = line.box().sharedWidth(whole) > 0.3;
      boolean close = distance(line) < FARTHEST * line.lineHeight();
      if (line.turn() == 0 && outside && over && close && !isConditionLine(line)) {
        near.add(line);
      }
    }
    near.removeIf(line -> line.text().length() > 90 || line.text().length() < 3);
    near.sort(Comparator.comparingDouble(this::unlikely));
    return near.isEmpty() || !isTitleLike(near.get(0)) ? null : near.get(0);
  }

  /** Words of a kind or a figure's number; or a short line that stands out just above. */
  private boolean isTitleLike(Phrase line) {
    String lower = ChartText.lower(line.text());
    boolean standsOut = line.words().get(0).bold() || line.lineHeight() > 1.1 * medianHeight();
    return words.kinds().isIn(lower)
        || words.measures().isIn(lower)
        || NUMBERED.matcher(lower).matches()
        || (standsOut && line.box().y() < whole.y());
  }

  /** Smaller for what is more of a title. */
  private double unlikely(Phrase line) {
    String lower = ChartText.lower(line.text());
    double cost = distance(line) / line.lineHeight();
    cost -= words.kinds().isIn(lower) ? 6 : 0;
    cost -= words.measures().isIn(lower) ? 2 : 0;
    cost -= NUMBERED.matcher(lower).matches() ? 3 : 0;
    cost -= 4 * Math.max(0, Math.min(1, line.lineHeight() / medianHeight() - 1));
    cost -= line.words().get(0).bold() ? 2 : 0;
    cost += line.box().y() > whole.y() ? 1 : 0;
    return cost;
  }

  private double distance(Phrase line) {
    return Math.max(whole.y() - line.box().bottom(), line.box().y() - whole.bottom());
  }
}
