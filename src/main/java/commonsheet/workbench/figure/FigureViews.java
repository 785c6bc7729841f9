package commonsheet.workbench.figure;

import commonsheet.chart.overlay.Figure;
import commonsheet.chart.reference.AxisReference;
import commonsheet.chart.reference.Direction;
import commonsheet.chart.reference.PlacedLine;
import commonsheet.chart.reference.ReferenceException;
import commonsheet.record.Curve;
import commonsheet.record.StoredRecord;
import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts together what the page of charts shows. */
final class FigureViews {
  private FigureViews() {}

  static FigureView of(StoredRecord stored) {
    List<FigureView.Chart> charts = new ArrayList<>();
    int page = 0;
    int number = 0;
    for (Figure figure : Figure.of(List.of(), stored.record().curves())) {
      number = figure.page() == page ? number + 1 : 1;
      page = figure.page();
      charts.add(chart(figure, number));
    }
    return new FigureView(stored.version(), charts, Measures.all());
  }

  private static FigureView.Chart chart(Figure figure, int number) {
    Map<Curve.Axis, FigureView.Axis> xs = new LinkedHashMap<>();
    Map<Curve.Axis, FigureView.Axis> ys = new LinkedHashMap<>();
    List<FigureView.Line> lines = new ArrayList<>();
    for (Curve curve : figure.curves()) {
      String x =
          xs.computeIfAbsent(curve.x(), axis -> axis(axis, Direction.ACROSS, xs.size())).key();
      String y = ys.computeIfAbsent(curve.y(), axis -> axis(axis, Direction.DOWN, ys.size())).key();
      lines.add(line(curve, x, y));
    }
    List<FigureView.Axis> axes = new ArrayList<>(xs.values());
    axes.addAll(ys.values());
    Box box = figure.box();
    return new FigureView.Chart(
        number,
        figure.page(),
        List.of(box.x(), box.y(), box.width(), box.height()),
        figure.kind(),
        axes,
        lines);
  }

  private static FigureView.Line line(Curve curve, String x, String y) {
    PlacedLine placed = PlacedLine.of(curve).orElse(new PlacedLine(List.of(), 0, 0));
    return new FigureView.Line(
        curve.id(),
        x,
        y,
        placed.points().stream().map(p -> List.of(p.x(), p.y())).toList(),
        placed.errorX(),
        placed.errorY());
  }

  private static FigureView.Axis axis(Curve.Axis axis, Direction direction, int before) {
    boolean logarithmic = false;
    double error = 0;
    try {
      AxisReference reference = AxisReference.of(axis, direction);
      logarithmic = reference.isLogarithmic();
      error = reference.error();
    } catch (ReferenceException none) {
      // An axis without ticks is shown without a scale; a person can give it some.
      error = 0;
    }
    return new FigureView.Axis(
        direction.letter() + (before + 1),
        direction.letter(),
        axis.quantity(),
        axis.unit(),
        axis.scale(),
        logarithmic,
        error,
        axis.ticks());
  }
}
