package commonsheet.chart;

import commonsheet.chart.axis.ReadAxis;
import commonsheet.chart.naming.CurveShape;
import commonsheet.chart.naming.LabelMeaning;
import commonsheet.chart.plot.Trace;
import commonsheet.chart.text.AxisMeasure;
import commonsheet.chart.text.ChartKind;
import commonsheet.chart.text.Measure;
import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * The y axis a curve is read from and what it shows there.
 *
 * @param doubts why it may be another, one sentence each
 */
record AxisChoice(ReadAxis axis, AxisMeasure measure, List<String> doubts) {
  AxisChoice {
    doubts = List.copyOf(doubts);
  }

  /**
   * Chooses for one curve.
   *
   * @param label what its label says, or null
   * @return null where no axis says what it shows and nothing else does
   */
  static AxisChoice of(
      Trace trace, LabelMeaning label, List<ReadAxis> axes, ChartKind kind, Box frame) {
    Measure named = label == null ? null : label.measure();
    List<AxisChoice> ways = new ArrayList<>();
    for (ReadAxis axis : axes) {
      for (AxisMeasure measure : axis.titles()) {
        ways.add(new AxisChoice(axis, measure, doubts(axis)));
      }
    }
    List<ReadAxis> untitled = axes.stream().filter(axis -> axis.titles().isEmpty()).toList();
    if (named != null) {
      AxisChoice way = named(named, ways, untitled);
      if (way != null) {
        return way;
      }
    }
    AxisChoice unnamed = unnamed(trace, ways, axes, kind, frame);
    return named == null || unnamed == null ? unnamed : unnamed.doubted(missing(named));
  }

  private static AxisChoice unnamed(
      Trace trace, List<AxisChoice> ways, List<ReadAxis> axes, ChartKind kind, Box frame) {
    if (ways.size() == 1 && (axes.size() == 1 || kind != ChartKind.CHARGE)) {
      return axes.size() == 1 ? ways.get(0) : ways.get(0).doubted(several());
    }
    return ways.isEmpty() ? null : byShape(trace, ways, kind, frame);
  }

  private static String missing(Measure named) {
    return "Its label says " + named.quantity() + ", but no axis that was read shows that.";
  }

  private static AxisChoice named(Measure named, List<AxisChoice> ways, List<ReadAxis> untitled) {
    for (AxisChoice way : ways) {
      if (way.measure.measure().equals(named)) {
        return way;
      }
    }
    return untitled.size() == 1
        ? new AxisChoice(untitled.get(0), new AxisMeasure(named, null), List.of())
        : null;
  }

  private static List<String> doubts(ReadAxis axis) {
    return axis.titleDoubt() == null ? List.of() : List.of(axis.titleDoubt());
  }

  private AxisChoice doubted(String doubt) {
    List<String> more = new ArrayList<>(doubts);
    more.add(doubt);
    return new AxisChoice(axis, measure, more);
  }

  private static String several() {
    return "Nothing says which of the y axes this curve belongs to.";
  }

  private static AxisChoice byShape(Trace trace, List<AxisChoice> ways, ChartKind kind, Box frame) {
    AxisChoice only = null;
    int fitting = 0;
    for (AxisChoice way : ways) {
      if (kind == ChartKind.CHARGE && CurveShape.fits(trace, way.measure.measure(), frame)) {
        only = way;
        fitting++;
      }
    }
    return fitting == 1
        ? only.doubted(
            "Nothing but its shape says that this curve shows the "
                + only.measure.measure().quantity()
                + ".")
        : ways.get(0).doubted(several());
  }
}
