package commonsheet.chart;

import commonsheet.chart.axis.AxisUnits;
import commonsheet.chart.axis.PlotAxes;
import commonsheet.chart.axis.ReadAxis;
import commonsheet.chart.naming.CurveLabel;
import commonsheet.chart.naming.LabelMeaning;
import commonsheet.chart.naming.NamedTrace;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.text.AxisMeasure;
import commonsheet.chart.text.ChartKind;
import commonsheet.chart.text.Measure;
import commonsheet.quantity.PlainNumber;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.ArrayList;
import java.util.List;

/** The curves of one chart, each with its axes, its conditions and its doubts. */
final class CurveFamily {
  private static final String SOURCE = "common practice, no source";

  /** Recognised words below this confidence are not relied on. */
  private static final double CONFIDENT = 0.5;

  /** A stated and a drawn current that differ by less are the same. */
  private static final double SAME_CURRENT = 0.03;

  private final Plot plot;
  private final PlotAxes axes;
  private final ChartKind kind;
  private final Conditions common;
  private final Double capacity;

  CurveFamily(Plot plot, PlotAxes axes, ChartKind kind, Conditions common, Double capacity) {
    this.plot = plot;
    this.axes = axes;
    this.kind = kind;
    this.common = common;
    this.capacity = capacity;
  }

  /** The curves; where it is not known what an axis shows, a finding instead. */
  List<Curve> curves(List<NamedTrace> named, List<Finding> findings) {
    List<String> doubts = new ArrayList<>();
    CurveBuilder.Used x = across(doubts);
    List<Curve> curves = new ArrayList<>();
    CurveBuilder builder = new CurveBuilder(plot, kind);
    int without = 0;
    List<String> passing = new ArrayList<>();
    for (NamedTrace one : named) {
      LabelMeaning meaning = one.label() == null ? null : one.label().meaning();
      AxisChoice choice = AxisChoice.of(one.trace(), meaning, axes.ys(), kind, plot.frame());
      if (x == null || choice == null) {
        without++;
        continue;
      }
      AxisUnits.Canonical canonical = AxisUnits.of(choice.axis(), choice.measure());
      CurveBuilder.Used y =
          new CurveBuilder.Used(choice.axis(), choice.measure().measure(), canonical);
      List<String> further = new ArrayList<>(doubts);
      further.addAll(choice.doubts());
      if (!isConfirmed(choice, canonical, named)) {
        further.addAll(canonical.doubts());
      }
      further.addAll(trust(choice.axis()));
      further.addAll(label(one, named.size()));
      Conditions own = meaning == null ? Conditions.NONE : meaning.conditions();
      Conditions all = CurveConditions.of(own, common);
      String note = note(all);
      Curve curve =
          builder.curve(
              "c" + (curves.size() + 1),
              one,
              x,
              y,
              note == null ? all : CurveConditions.withCurrent(all, capacity),
              note,
              further);
      if (CutOff.isPassed(curve)) {
        passing.add(curve.id());
        curve = CutOff.without(curve);
      }
      curves.add(curve);
    }
    if (!passing.isEmpty()) {
      findings.add(CutOff.finding(plot.page(), passing, common));
    }
    if (without > 0) {
      findings.add(unknown(x == null ? "x axis" : "y axis"));
    }
    return WholeCurves.checked(curves);
  }

  /**
   * Whether the stated charge current bears out the unit taken for an axis: the curve of the
   * current on it begins at just that.
   */
  private boolean isConfirmed(
      AxisChoice choice, AxisUnits.Canonical canonical, List<NamedTrace> named) {
    Double stated = common.get(Conditions.CHARGE_CURRENT);
    if (kind != ChartKind.CHARGE || stated == null || !canonical.printed().startsWith("mA")) {
      return false;
    }
    for (NamedTrace other : named) {
      Measure shown = other.label() == null ? null : other.label().meaning().measure();
      if (shown != null && shown.quantity().equals("current")) {
        double top =
            other.trace().points().stream()
                .mapToDouble(point -> choice.axis().scale().value(point.y()) / 1000)
                .max()
                .orElse(0);
        return Math.abs(top - stated) <= SAME_CURRENT * stated;
      }
    }
    return false;
  }

  private CurveBuilder.Used across(List<String> doubts) {
    ReadAxis axis = axes.x();
    AxisMeasure shown = axis.titles().isEmpty() ? guessed() : axis.titles().get(0);
    if (shown == null) {
      return null;
    }
    if (axis.titles().isEmpty()) {
      doubts.add(
          "The x axis has no title; its numbers are taken for " + shown.measure().quantity() + ".");
    }
    AxisUnits.Canonical canonical = AxisUnits.of(axis, shown);
    doubts.addAll(canonical.doubts());
    doubts.addAll(trust(axis));
    return new CurveBuilder.Used(axis, shown.measure(), canonical);
  }

  /** Without a title nothing is guessed but the charge drawn from a cell. */
  private AxisMeasure guessed() {
    return kind == ChartKind.DISCHARGE
        ? new AxisMeasure(new Measure("capacity", "A.h"), null)
        : null;
  }

  /** What speaks against relying on a scale. */
  private static List<String> trust(ReadAxis axis) {
    int in = axis.fit().in().size();
    boolean recognised = axis.fit().in().stream().anyMatch(mark -> mark.label().recognised());
    List<String> doubts = new ArrayList<>();
    String name = axis.side().printed();
    boolean aslant = axis.fit().in().stream().anyMatch(mark -> mark.label().aslant());
    if (aslant && !axis.onTicks()) {
      doubts.add(
          "The numbers of the " + name + " stand aslant; which mark each belongs to is not sure.");
    }
    if (in < 3) {
      doubts.add("The scale of the " + name + " rests on two numbers, which nothing checks.");
    } else if (recognised && !axis.vouched()) {
      doubts.add(
          "The scale of the "
              + name
              + " rests on only "
              + in
              + " numbers recognised in a picture.");
    }
    return doubts;
  }

  /** What speaks against relying on a label's words. */
  private static List<String> label(NamedTrace named, int curves) {
    CurveLabel label = named.label();
    if (label == null) {
      return List.of();
    }
    List<String> doubts = new ArrayList<>();
    if (label.meaning().isEmpty() && curves > 1) {
      doubts.add("The label \"" + label.text() + "\" states no condition that could be read.");
    }
    boolean open = label.text().indexOf('(') >= 0 && label.text().indexOf(')') < 0;
    if (open) {
      doubts.add("The label \"" + label.text() + "\" is cut off.");
    }
    boolean recognised = label.phrase().recognised();
    if (recognised && !(label.meaning().plain() && label.phrase().confidence() >= CONFIDENT)) {
      doubts.add("The label \"" + label.text() + "\" was not clearly recognised in the picture.");
    }
    return doubts;
  }

  /** By which capacity a rate was made a current, or null where it was not. */
  private String note(Conditions all) {
    boolean rate = CurveConditions.withCurrent(all, capacity) != all;
    return rate ? "current by the capacity of " + PlainNumber.of(capacity, 4) + " A.h" : null;
  }

  private Finding unknown(String axis) {
    return new Finding(
        "chart/untitled-axis",
        Severity.WARNING,
        List.of(),
        "A chart on page "
            + plot.page()
            + " has curves that could not be used, since nothing says what its "
            + axis
            + " shows.",
        SOURCE);
  }
}
