package commonsheet.chart.naming;

import commonsheet.chart.plot.Pointer;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.plot.Trace;
import commonsheet.chart.text.ChartKind;
import commonsheet.chart.text.Measure;
import commonsheet.sheet.Box;
import java.util.List;

/**
 * What speaks for a label to belong to a curve, as a cost from 0 (nothing could be clearer) to 1:
 * the sample in a legend, then the end of a pointer, then nearness.
 */
final class LabelCosts {
  /** A pointer that ends farther from a curve than this, in heights of a line, misses it. */
  private static final double POINTER_MISS = 1.5;

  /** A label farther from a curve than this, in heights of a line, is not by it. */
  private static final double FAR = 4;

  /** Nearness says less than a pointer, a pointer no less than a sample. */
  private static final double NEAR_BASE = 0.25;

  private static final double POINTER_BASE = 0.02;

  /** A quantity the curve's shape speaks against. */
  private static final double WRONG_SHAPE = 0.4;

  private final List<Trace> traces;
  private final List<CurveLabel> labels;
  private final Box frame;
  private final ChartKind kind;

  LabelCosts(List<Trace> traces, List<CurveLabel> labels, Box frame, ChartKind kind) {
    this.traces = traces;
    this.labels = labels;
    this.frame = frame;
    this.kind = kind;
  }

  /** Row by row of curves, the cost of each label. */
  double[][] all() {
    double[][] costs = new double[traces.size()][labels.size()];
    for (int i = 0; i < traces.size(); i++) {
      for (int j = 0; j < labels.size(); j++) {
        costs[i][j] = cost(traces.get(i), labels.get(j));
      }
    }
    return costs;
  }

  private double cost(Trace trace, CurveLabel label) {
    double cost = evidence(trace, label);
    Measure measure = label.meaning().measure();
    boolean shaped = kind == ChartKind.CHARGE && measure != null;
    return shaped && !CurveShape.fits(trace, measure, frame) ? cost + WRONG_SHAPE : cost;
  }

  private static double evidence(Trace trace, CurveLabel label) {
    if (!label.samples().isEmpty()) {
      double least = 1;
      for (Sample sample : label.samples()) {
        least = Math.min(least, StyleDistance.between(trace.style(), sample.style()));
      }
      return least;
    }
    double line = label.phrase().lineHeight();
    double near = CurveGeometry.distance(trace, label.phrase().box());
    double cost = NEAR_BASE + 0.7 * Math.min(1, near / (FAR * line));
    for (Pointer pointer : label.pointers()) {
      double off = CurveGeometry.distance(trace, pointer.to());
      cost = Math.min(cost + 0.1, POINTER_BASE + 0.9 * Math.min(1, off / (POINTER_MISS * line)));
    }
    return cost;
  }
}
