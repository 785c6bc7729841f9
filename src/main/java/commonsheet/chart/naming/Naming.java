package commonsheet.chart.naming;

import commonsheet.chart.plot.Trace;
import commonsheet.chart.text.ChartKind;
import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Says which label belongs to which curve: all at once, so that one clear pair helps the others,
 * and with a doubt wherever another way would be nearly as good.
 */
public final class Naming {
  /** A curve rather goes without a label than with one that costs more. */
  private static final double UNNAMED = 0.9;

  /** Where exchanging two labels would cost less than this more, they are not told apart. */
  private static final double CLEAR = 0.15;

  /** In a chart whose order contradicts a label, only this much makes the others safe. */
  private static final double SAFE = 0.6;

  /** Where it would cost less than this more, the order of the curves does not settle it either. */
  private static final double HAIR = 0.03;

  /** Order along the chart decides only between ways that are otherwise the same. */
  private static final double ORDER_WEIGHT = 0.05;

  /** A sample that costs more than this does not show the curve's style. */
  private static final double OTHER_STYLE = 0.4;

  private final List<Trace> traces;
  private final List<CurveLabel> labels;
  private final CurveOrder order;
  private final double[][] costs;
  private final double slack;

  public Naming(List<Trace> traces, List<CurveLabel> labels, Box frame, ChartKind kind) {
    this.traces = traces;
    this.labels = worthUsing(labels, traces.size());
    this.order = new CurveOrder(kind);
    this.costs = new LabelCosts(traces, this.labels, frame, kind).all();
    this.slack = 0.006 * frame.height();
  }

  /** With a legend for the curves, other words in the plot name none of them. */
  private static List<CurveLabel> worthUsing(List<CurveLabel> labels, int curves) {
    List<CurveLabel> inLegend = labels.stream().filter(l -> !l.samples().isEmpty()).toList();
    List<CurveLabel> pointing =
        labels.stream().filter(l -> !l.samples().isEmpty() || !l.pointers().isEmpty()).toList();
    if (inLegend.size() >= Math.max(2, curves) || (curves == 1 && inLegend.size() == 1)) {
      return inLegend;
    }
    return pointing.size() >= Math.max(2, curves) ? pointing : labels;
  }

  /** The curves in their order with their labels. */
  public List<NamedTrace> named() {
    int[] labelOf = assigned();
    List<Integer> byOrder = byOrder(labelOf);
    List<NamedTrace> named = new ArrayList<>();
    for (int i = 0; i < traces.size(); i++) {
      CurveLabel label = labelOf[i] < 0 ? null : labels.get(labelOf[i]);
      List<String> doubts = label == null ? unnamed() : doubts(i, labelOf, byOrder.contains(i));
      named.add(new NamedTrace(traces.get(i), label, doubts));
    }
    return named;
  }

  /** The labels no curve took. */
  public List<CurveLabel> unused(List<NamedTrace> named) {
    List<CurveLabel> taken = named.stream().map(NamedTrace::label).toList();
    return labels.stream().filter(label -> !taken.contains(label)).toList();
  }

  /** The label of each curve, or -1. */
  private int[] assigned() {
    int rows = traces.size();
    double[][] padded = new double[rows][labels.size() + rows];
    for (int i = 0; i < rows; i++) {
      Arrays.fill(padded[i], UNNAMED);
      for (int j = 0; j < labels.size(); j++) {
        padded[i][j] = costs[i][j] + ORDER_WEIGHT * outOfOrder(i, j);
      }
    }
    int[] labelOf = Assignment.of(padded);
    for (int i = 0; i < rows; i++) {
      labelOf[i] = labelOf[i] < labels.size() ? labelOf[i] : -1;
    }
    return labelOf;
  }

  /** How far a curve's rank from the top differs from the rank its label would give it. */
  private double outOfOrder(int curve, int label) {
    if (labels.size() != traces.size()) {
      return 0;
    }
    int rank = 0;
    for (Trace other : traces) {
      rank +=
          other != traces.get(curve) && CurveGeometry.above(other, traces.get(curve)) > 0 ? 1 : 0;
    }
    int wanted = 0;
    LabelMeaning meaning = labels.get(label).meaning();
    for (CurveLabel other : labels) {
      wanted += order.expected(other.meaning(), meaning) > 0 ? 1 : 0;
    }
    return Math.abs(rank - wanted);
  }

  /** As the last resort, as many labels as curves are left are handed out in order. */
  private List<Integer> byOrder(int[] labelOf) {
    List<Integer> curves = new ArrayList<>();
    List<Integer> free = new ArrayList<>();
    for (int j = 0; j < labels.size(); j++) {
      int label = j;
      if (Arrays.stream(labelOf).noneMatch(taken -> taken == label)) {
        free.add(j);
      }
    }
    for (int i = 0; i < labelOf.length; i++) {
      if (labelOf[i] < 0) {
        curves.add(i);
      }
    }
    if (curves.size() != free.size() || curves.size() < 2 || !ordered(free)) {
      return List.of();
    }
    curves.sort((a, b) -> CurveGeometry.above(traces.get(a), traces.get(b)) > 0 ? -1 : 1);
    free.sort((a, b) -> -order.expected(labels.get(a).meaning(), labels.get(b).meaning()));
    for (int k = 0; k < curves.size(); k++) {
      labelOf[curves.get(k)] = free.get(k);
    }
    return curves;
  }

  private boolean ordered(List<Integer> some) {
    for (int i = 1; i < some.size(); i++) {
      LabelMeaning one = labels.get(some.get(i - 1)).meaning();
      if (order.expected(one, labels.get(some.get(i)).meaning()) == 0) {
        return false;
      }
    }
    return true;
  }

  private List<String> unnamed() {
    return traces.size() == 1
        ? List.of()
        : List.of(
            "No label could be tied to this curve, so it is not known under which condition it"
                + " was taken.");
  }

  private List<String> doubts(int curve, int[] labelOf, boolean byOrder) {
    CurveLabel label = labels.get(labelOf[curve]);
    List<String> doubts = new ArrayList<>();
    if (byOrder) {
      doubts.add(
          "Named \""
              + label.text()
              + "\" only by its order among the curves; no label stands by it.");
      return doubts;
    }
    double cost = costs[curve][labelOf[curve]];
    if (!label.samples().isEmpty() && cost > OTHER_STYLE) {
      doubts.add("The legend's sample for \"" + label.text() + "\" does not look like this curve.");
    }
    boolean ordered = keepsOrder(curve, labelOf);
    double margin = margin(curve, labelOf);
    if (traces.size() > 1 && (margin < HAIR || (margin < CLEAR && !ordered))) {
      doubts.add(
          "The label \"" + label.text() + "\" could as well belong to a neighbouring curve.");
    }
    contradiction(curve, labelOf, doubts);
    if (doubts.isEmpty() && margin < SAFE && isFamilyDisordered(labelOf)) {
      doubts.add(
          "Other labels of this chart contradict the order of its curves, so this one may be wrong"
              + " too.");
    }
    return doubts;
  }

  /** How much more the next best way of naming this curve costs. */
  private double margin(int curve, int[] labelOf) {
    int mine = labelOf[curve];
    double least = Double.MAX_VALUE;
    for (int other = 0; other < traces.size(); other++) {
      if (other == curve) {
        continue;
      }
      int theirs = labelOf[other];
      double more =
          theirs < 0
              ? costs[other][mine] - costs[curve][mine]
              : costs[other][mine]
                  + costs[curve][theirs]
                  - costs[curve][mine]
                  - costs[other][theirs];
      least = Math.min(least, more);
    }
    for (int j = 0; j < labels.size(); j++) {
      int label = j;
      boolean free = Arrays.stream(labelOf).noneMatch(taken -> taken == label);
      if (free && !labels.get(j).meaning().equals(labels.get(mine).meaning())) {
        least = Math.min(least, costs[curve][j] - costs[curve][mine]);
      }
    }
    return least;
  }

  /** Whether the curve stands where its label says, against every other named curve. */
  private boolean keepsOrder(int curve, int[] labelOf) {
    int agreeing = 0;
    for (int other = 0; other < traces.size(); other++) {
      if (other != curve && labelOf[other] >= 0) {
        int kept = kept(curve, other, labelOf);
        if (kept < 0) {
          return false;
        }
        agreeing += kept;
      }
    }
    return agreeing > 0;
  }

  private boolean isFamilyDisordered(int[] labelOf) {
    for (int i = 0; i < labelOf.length; i++) {
      for (int j = 0; j < i; j++) {
        if (labelOf[i] >= 0 && labelOf[j] >= 0 && kept(i, j, labelOf) < 0) {
          return true;
        }
      }
    }
    return false;
  }

  private int kept(int curve, int other, int[] labelOf) {
    return order.kept(
        traces.get(curve),
        labels.get(labelOf[curve]).meaning(),
        traces.get(other),
        labels.get(labelOf[other]).meaning(),
        slack);
  }

  private void contradiction(int curve, int[] labelOf, List<String> doubts) {
    List<Integer> others = new ArrayList<>();
    for (int other = 0; other < traces.size(); other++) {
      if (other != curve && labelOf[other] >= 0 && kept(curve, other, labelOf) < 0) {
        others.add(other);
      }
    }
    others.sort(Comparator.naturalOrder());
    if (!others.isEmpty()) {
      doubts.add(
          "By its label \""
              + labels.get(labelOf[curve]).text()
              + "\" this curve should run on the other side of \""
              + labels.get(labelOf[others.get(0)]).text()
              + "\": one of the two labels may be wrong.");
    }
  }
}
