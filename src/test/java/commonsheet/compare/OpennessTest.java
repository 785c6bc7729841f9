package commonsheet.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.chart.OpenData;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Standing;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** How wide the bounds between curves are, by what the curves tell of themselves. */
class OpennessTest {
  private static final double CAPACITY = 3;
  private static final double RESISTANCE = 0.04;
  private static final int POINTS = 60;

  @Test
  void curvesThatFollowEachOtherGiveNarrowBounds() throws IOException {
    // The four curves of pybamm_enertech; between them nothing is measured.
    CellOfCurves cell = new CellOfCurves("tw-26");
    for (String rate : List.of("0.1", "0.5", "1", "2")) {
      add(cell, 2.28 * Double.parseDouble(rate), OpenData.enertech(rate));
    }
    Figure all = cell.under(3.4, 3.0).figure(Measure.MEAN_VOLTAGE);
    assertTrue(all.high() - all.low() < 0.03, () -> all.low() + " to " + all.high());
  }

  @Test
  void curvesOfWhichOneStandsApartKeepWideBounds() throws IOException {
    CellOfCurves cell = new CellOfCurves("tw-26");
    for (String rate : List.of("0.2", "0.5", "1", "2", "3")) {
      add(cell, 2.7 * Double.parseDouble(rate), OpenData.kokam(rate));
    }
    Figure mean = cell.under(6.75, 2.7).figure(Measure.MEAN_VOLTAGE);
    double gap = mean(cell, 5.4) - mean(cell, 8.1);
    assertEquals(0.4 * gap, (mean.high() - mean.low()) / 2, 0.1 * gap);
  }

  @Test
  void threeCurvesAreTooFewToTell() {
    double two = halfWidth(cell(0.2, 3), 1.6);
    double three = halfWidth(cell(0.2, 3, 6), 1.6);
    double four = halfWidth(cell(0.2, 3, 4.5, 6), 1.6);
    assertEquals(two, three, 0.1 * two);
    assertTrue(four < 0.5 * three, four + " of " + three);
  }

  /** A cell of one resistance that gives a little less at more current, known by formula. */
  @Test
  void whatAFormulaGivesLiesWithin() {
    CellOfCurves cell = cell(0.3, 0.75, 1.5, 3, 6);
    int within = 0;
    int all = 0;
    for (double current = 0.4; current < 6; current += 0.23) {
      CellFigures said = cell.under(current, 3.0);
      CellFigures truth = cell(current).under(current, 3.0);
      for (Measure measure :
          List.of(Measure.DELIVERED_CAPACITY, Measure.DELIVERED_ENERGY, Measure.MEAN_VOLTAGE)) {
        Figure figure = said.figure(measure);
        double value = truth.figure(measure).value();
        within += figure.low() <= value && value <= figure.high() ? 1 : 0;
        all++;
      }
    }
    assertTrue(within >= 0.9 * all, within + " of " + all);
  }

  private static double halfWidth(CellOfCurves cell, double current) {
    Figure mean = cell.under(current, 3.0).figure(Measure.MEAN_VOLTAGE);
    return (mean.high() - mean.low()) / 2;
  }

  private static double mean(CellOfCurves cell, double current) {
    return cell.under(current, 2.7).figure(Measure.MEAN_VOLTAGE).value();
  }

  private static CellOfCurves cell(double... currents) {
    CellOfCurves cell = new CellOfCurves("tw-30");
    for (double current : currents) {
      double whole = CAPACITY * (1.02 - 0.03 * Math.pow(current / CAPACITY, 0.8));
      List<List<Double>> points = new ArrayList<>();
      for (int i = 0; i <= POINTS; i++) {
        double share = (double) i / POINTS;
        double open = 4.15 - 0.75 * share - 0.9 * Math.pow(share, 12);
        points.add(List.of(share * whole, open - current * RESISTANCE));
      }
      add(cell, current, points);
    }
    return cell;
  }

  private static void add(CellOfCurves cell, double current, List<List<Double>> points) {
    double most = points.get(points.size() - 1).get(0);
    cell.curve(
        Map.of(Conditions.DISCHARGE_CURRENT, current, Conditions.TEMPERATURE, 25.0),
        points,
        new Curve.Uncertainty(0.001 * most, 0.002),
        Standing.READ);
  }
}
