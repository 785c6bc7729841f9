package commonsheet.chart;

import commonsheet.chart.axis.AxesReader;
import commonsheet.chart.axis.PlotAxes;
import commonsheet.chart.plot.Plot;
import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads plots: what their axes show, which curve is which, and how far each can be trusted. A chart
 * whose axes cannot be read comes back without curves and with a finding that says why.
 *
 * <p>Curves are called c1, c2, … within each chart; {@link Chart#numberedFrom} gives them numbers
 * of their own in a record.
 */
public final class ChartReader {
  private static final double UNDER = 2;

  private final Double capacity;

  /** Reads what stands by the plots and nothing else. */
  public ChartReader() {
    this(null);
  }

  /**
   * Also gives the current where a label has only a rate, and notes by which capacity.
   *
   * @param capacity rated or nominal capacity of the cell in A.h, or null
   */
  public ChartReader(Double capacity) {
    this.capacity = capacity;
  }

  /** One plot, with the words it carries. */
  public Chart read(Plot plot) {
    return read(List.of(plot)).get(0);
  }

  /**
   * The plots of one page, in their order. Read together so that a heading between two of them goes
   * to the right one.
   */
  public List<Chart> read(List<Plot> found) {
    List<Plot> plotsOfPage = found.stream().map(plot -> withOwnWords(plot, found)).toList();
    List<PlotAxes> axes = plotsOfPage.stream().map(plot -> new AxesReader(plot).read()).toList();
    List<Chart> charts = new ArrayList<>();
    for (int i = 0; i < plotsOfPage.size(); i++) {
      List<Word> words = new ArrayList<>();
      for (Word word : plotsOfPage.get(i).words()) {
        if (isFree(word, axes) && isNearest(word, i, axes)) {
          words.add(word);
        }
      }
      charts.add(new ChartAssembly(plotsOfPage.get(i), axes.get(i), words, capacity).chart());
    }
    return charts;
  }

  /** A plot without the words that stand beside another one, nearer to that. */
  private static Plot withOwnWords(Plot plot, List<Plot> all) {
    List<Word> own =
        plot.words().stream()
            .filter(word -> all.stream().noneMatch(other -> isBeside(word, other, plot)))
            .toList();
    return plot.withWords(own);
  }

  private static boolean isBeside(Word word, Plot other, Plot plot) {
    double mine = across(word.box(), plot.frame());
    double theirs = across(word.box(), other.frame());
    boolean level =
        word.box().bottom() > other.frame().y() && word.box().y() < other.frame().bottom();
    return mine > 0 && theirs < mine && level;
  }

  /** How far a word stands to the left or right of a frame; 0 within. */
  private static double across(Box word, Box frame) {
    return Math.max(0, Math.max(frame.x() - word.right(), word.x() - frame.right()));
  }

  private static boolean isFree(Word word, List<PlotAxes> axes) {
    return axes.stream().noneMatch(some -> some.claimed().contains(word));
  }

  /** Whether no other chart of the page is nearer to a word. */
  private static boolean isNearest(Word word, int index, List<PlotAxes> axes) {
    double mine = distance(axes.get(index).whole(), word.box());
    for (PlotAxes other : axes) {
      if (distance(other.whole(), word.box()) < mine - 1e-6) {
        return false;
      }
    }
    return true;
  }

  /** Headings stand over their chart: what is under a chart counts as twice as far. */
  private static double distance(Box whole, Box word) {
    double dx = Math.max(0, Math.max(whole.x() - word.right(), word.x() - whole.right()));
    double above = Math.max(0, whole.y() - word.bottom());
    double below = Math.max(0, word.y() - whole.bottom());
    return Math.hypot(dx, above + UNDER * below);
  }
}
