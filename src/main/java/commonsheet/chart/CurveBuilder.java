package commonsheet.chart;

import commonsheet.chart.axis.AxisUnits;
import commonsheet.chart.axis.ReadAxis;
import commonsheet.chart.axis.Scale;
import commonsheet.chart.axis.ScaleFit;
import commonsheet.chart.naming.NamedTrace;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.PlotInk;
import commonsheet.chart.plot.Rounding;
import commonsheet.chart.plot.Thinning;
import commonsheet.chart.plot.Trace;
import commonsheet.chart.text.ChartKind;
import commonsheet.chart.text.Measure;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.record.WordSource;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.List;

/** Makes the curve of a record from a trace, its axes and its label. */
final class CurveBuilder {
  /** Points left out of a curve lie off by no more than this share of its uncertainty. */
  private static final double THINNING = 0.1;

  /** A curve may leave the frame by this share of it and still be inside: line widths. */
  private static final double OVER_FRAME = 0.01;

  /** A curve may go back by this share of the frame: joints of a line, steep falls. */
  private static final double BACKWARDS = 0.01;

  /** In pixels an upright piece, as at the start of a charge, leans by the width of the line. */
  private static final double BACKWARDS_IN_PIXELS = 0.025;

  private final Plot plot;
  private final Box frame;
  private final ChartKind kind;

  CurveBuilder(Plot plot, ChartKind kind) {
    this.plot = plot;
    this.frame = plot.frame();
    this.kind = kind;
  }

  /** An axis as a curve uses it. */
  record Used(ReadAxis axis, Measure measure, AxisUnits.Canonical canonical) {
    Curve.Axis recorded() {
      List<Curve.Tick> ticks = new ArrayList<>();
      for (ScaleFit.Mark mark : axis.fit().in()) {
        double printed = mark.label().value();
        double value =
            canonical.printed().equals(canonical.unit())
                ? printed
                : commonsheet.quantity.Units.convert(
                    printed, canonical.printed(), canonical.unit());
        ticks.add(new Curve.Tick(Rounding.to(mark.at(), 0.01), value, mark.label().text()));
      }
      return new Curve.Axis(measure.quantity(), canonical.unit(), ticks);
    }
  }

  /**
   * The curve.
   *
   * @param conditions its own and the chart's
   * @param further doubts found before
   */
  Curve curve(
      String id,
      NamedTrace named,
      Used x,
      Used y,
      Conditions conditions,
      String note,
      List<String> further) {
    Trace trace = named.trace();
    List<String> doubts = new ArrayList<>(further);
    doubts.addAll(trace.doubts());
    doubts.addAll(named.doubts());
    doubts.addAll(drawn(trace));
    List<double[]> points = new ArrayList<>();
    double errorX = 0;
    double errorY = 0;
    Scale across = x.canonical().scale();
    Scale down = y.canonical().scale();
    for (Point point : trace.points()) {
      points.add(new double[] {across.value(point.x()), down.value(point.y())});
      errorX = Math.max(errorX, across.valueOf(across.error() + trace.errorX(), point.x()));
      errorY = Math.max(errorY, down.valueOf(down.error() + trace.errorY(), point.y()));
    }
    doubts.addAll(
        CurveChecks.doubts(
            kind, x.measure().quantity(), y.measure().quantity(), y.canonical().unit(), points));
    Thinning.Thinned thinned = Thinning.of(points, errorX, errorY, THINNING);
    double more = 1 + thinned.off();
    Curve.Uncertainty uncertainty =
        new Curve.Uncertainty(Rounding.twoDigits(errorX * more), Rounding.twoDigits(errorY * more));
    List<String> distinct = doubts.stream().distinct().toList();
    return new Curve(
        id,
        kind.label(),
        named.label() == null ? null : named.label().text(),
        conditions,
        x.recorded(),
        y.recorded(),
        Rounding.points(thinned.points(), uncertainty),
        uncertainty,
        method(),
        evidence(named, x, y, note),
        distinct.isEmpty() ? Standing.READ : Standing.UNSURE,
        distinct);
  }

  private Method method() {
    return plot.ink() == PlotInk.PATHS ? Method.VECTOR_CURVE : Method.COLOUR_TRACE;
  }

  /** What the way of a line over the plot says against its being one curve. */
  private List<String> drawn(Trace trace) {
    List<String> doubts = new ArrayList<>();
    double slackX = OVER_FRAME * frame.width() + 1;
    double slackY = OVER_FRAME * frame.height() + 1;
    double back = 0;
    boolean outside = false;
    for (int i = 0; i < trace.points().size(); i++) {
      Point point = trace.points().get(i);
      outside |=
          point.x() < frame.x() - slackX
              || point.x() > frame.right() + slackX
              || point.y() < frame.y() - slackY
              || point.y() > frame.bottom() + slackY;
      back += i == 0 ? 0 : Math.max(0, trace.points().get(i - 1).x() - point.x());
    }
    if (outside) {
      doubts.add("The line leaves the frame of the plot.");
    }
    double slack = plot.ink() == PlotInk.PATHS ? BACKWARDS : BACKWARDS_IN_PIXELS;
    if (back > slack * frame.width() + 2 * trace.errorX()) {
      doubts.add(
          "The line runs back on itself, so that one place of the x axis has several values.");
    }
    return doubts;
  }

  private Evidence evidence(NamedTrace named, Used x, Used y, String note) {
    boolean recognised = false;
    double confidence = 1;
    for (Used used : List.of(x, y)) {
      for (ScaleFit.Mark mark : used.axis().fit().in()) {
        recognised |= mark.label().recognised();
      }
    }
    if (named.label() != null) {
      recognised |= named.label().phrase().recognised();
      confidence = named.label().phrase().confidence();
    }
    List<Double> box =
        List.of(
            Rounding.to(frame.x(), 0.1),
            Rounding.to(frame.y(), 0.1),
            Rounding.to(frame.width(), 0.1),
            Rounding.to(frame.height(), 0.1));
    return new Evidence(
        plot.page(),
        box,
        named.label() == null ? null : named.label().text(),
        method(),
        "chart/" + kind.label(),
        recognised ? WordSource.OCR : WordSource.TEXT,
        recognised ? Rounding.to(confidence, 0.01) : null,
        note,
        List.of());
  }
}
