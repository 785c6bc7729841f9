package commonsheet.score;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Scores curves against the truth of a sheet's charts. Curves that a person has rejected, and those
 * that a person measured on a cell, are left out: neither is read from the sheet.
 */
public final class ChartScorer {
  /** More than any pairing of two charts can cost. */
  private static final double NEVER = 1e6;

  /** What a curve without a partner costs: as much as one with its points off. */
  private static final double UNPAIRED = 3;

  private ChartScorer() {}

  /** The curves of all records of one sheet; a curve that several records hold counts once. */
  public static ChartScore scoreSheet(
      String sheet, List<ChartTruth> truths, List<CellRecord> records) {
    return score(
        sheet,
        truths,
        records.stream().flatMap(record -> record.curves().stream()).distinct().toList());
  }

  /** How curves agree with the charts of one sheet. */
  public static ChartScore score(String sheet, List<ChartTruth> truths, List<Curve> curves) {
    List<List<Curve>> plots = plots(curves);
    ChartOutcome[][] pairs = new ChartOutcome[truths.size()][plots.size()];
    double[][] cost = new double[truths.size()][plots.size()];
    for (int t = 0; t < truths.size(); t++) {
      for (int p = 0; p < plots.size(); p++) {
        cost[t][p] = NEVER;
        if (samePage(truths.get(t), plots.get(p))) {
          pairs[t][p] = match(truths.get(t), plots.get(p));
          cost[t][p] = cost(truths.get(t), pairs[t][p]);
        }
      }
    }
    int[] partner = Assignment.solve(cost);
    List<ChartOutcome> charts = new ArrayList<>();
    List<List<Curve>> left = new ArrayList<>(plots);
    for (int t = 0; t < truths.size(); t++) {
      ChartOutcome pair = partner[t] < 0 ? null : pairs[t][partner[t]];
      charts.add(pair == null ? missed(truths.get(t)) : pair);
      if (pair != null) {
        left.remove(plots.get(partner[t]));
      }
    }
    List<CurveOutcome> spurious =
        left.stream().flatMap(List::stream).map(CurveOutcome::spurious).toList();
    return new ChartScore(sheet, charts, spurious);
  }

  /** The curves by the plot they were read from. */
  private static List<List<Curve>> plots(List<Curve> curves) {
    Map<List<Object>, List<Curve>> plots = new LinkedHashMap<>();
    for (Curve curve : curves) {
      if (curve.standing() != Standing.REJECTED && curve.method() != Method.MEASURED) {
        List<Object> place =
            curve.evidence() == null || curve.evidence().page() == null
                ? List.of()
                : List.of(curve.evidence().page(), curve.evidence().box());
        plots.computeIfAbsent(place, p -> new ArrayList<>()).add(curve);
      }
    }
    return List.copyOf(plots.values());
  }

  private static boolean samePage(ChartTruth truth, List<Curve> plot) {
    Curve first = plot.get(0);
    return first.evidence() == null
        || first.evidence().page() == null
        || Objects.equals(first.evidence().page(), truth.page());
  }

  private static ChartOutcome missed(ChartTruth truth) {
    return new ChartOutcome(
        truth, false, truth.curves().stream().map(CurveOutcome::missed).toList());
  }

  private static ChartOutcome match(ChartTruth chart, List<Curve> plot) {
    CurveAgreement[][] agreements = new CurveAgreement[chart.curves().size()][plot.size()];
    double[][] cost = new double[chart.curves().size()][plot.size()];
    for (int t = 0; t < agreements.length; t++) {
      CurveTruth expected = chart.curves().get(t);
      Conditions own = chart.own(expected);
      for (int c = 0; c < plot.size(); c++) {
        agreements[t][c] = CurveAgreement.of(chart, expected, own, plot.get(c));
        cost[t][c] = agreements[t][c].distance();
      }
    }
    int[] partner = Assignment.solve(cost);
    List<Curve> left = new ArrayList<>(plot);
    List<CurveOutcome> curves = new ArrayList<>();
    for (int t = 0; t < agreements.length; t++) {
      if (partner[t] < 0) {
        curves.add(CurveOutcome.missed(chart.curves().get(t)));
      } else {
        curves.add(CurveOutcome.paired(agreements[t][partner[t]]));
        left.remove(plot.get(partner[t]));
      }
    }
    left.stream().map(CurveOutcome::spurious).forEach(curves::add);
    return new ChartOutcome(chart, true, curves);
  }

  private static double cost(ChartTruth chart, ChartOutcome outcome) {
    double cost = 0;
    for (CurveOutcome curve : outcome.curves()) {
      if (curve.expected() == null || curve.read() == null) {
        cost += UNPAIRED;
      } else {
        cost +=
            CurveAgreement.of(chart, curve.expected(), chart.own(curve.expected()), curve.read())
                .distance();
      }
    }
    return cost;
  }
}
