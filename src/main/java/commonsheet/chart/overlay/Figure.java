package commonsheet.chart.overlay;

import commonsheet.chart.Chart;
import commonsheet.record.Curve;
import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * One chart of a sheet with the curves that a record has of it.
 *
 * @param page from 1
 * @param box the plot area in points from the top left of the page
 * @param title as printed; null where none is known
 * @param kind what it shows
 */
public record Figure(int page, Box box, String title, String kind, List<Curve> curves) {
  public Figure {
    curves = List.copyOf(curves);
  }

  /**
   * The charts that were found and those that only curves of the record tell of, page by page.
   * Points placed by hand belong to the chart around them.
   *
   * @param curves of the record; those that stand on no page are left out
   */
  public static List<Figure> of(List<Chart> charts, List<Curve> curves) {
    List<Figure> figures = new ArrayList<>();
    for (Chart chart : charts) {
      figures.add(new Figure(chart.page(), chart.box(), chart.title(), chart.kind(), List.of()));
    }
    for (Curve curve : curves) {
      if (curve.evidence().page() != null && curve.evidence().box().size() == 4) {
        add(curve, figures);
      }
    }
    figures.sort((one, other) -> Integer.compare(one.page(), other.page()));
    return List.copyOf(figures);
  }

  private static void add(Curve curve, List<Figure> figures) {
    List<Double> sides = curve.evidence().box();
    Box box = new Box(sides.get(0), sides.get(1), sides.get(2), sides.get(3));
    for (int i = 0; i < figures.size(); i++) {
      Figure figure = figures.get(i);
      boolean inside = figure.box.contains(box.centreX(), box.centreY());
      if (figure.page == curve.evidence().page() && inside) {
        List<Curve> more = new ArrayList<>(figure.curves);
        more.add(curve);
        figures.set(i, new Figure(figure.page, figure.box, figure.title, figure.kind, more));
        return;
      }
    }
    figures.add(new Figure(curve.evidence().page(), box, null, curve.kind(), List.of(curve)));
  }
}
