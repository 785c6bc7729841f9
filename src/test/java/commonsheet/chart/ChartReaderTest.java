package commonsheet.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChartReaderTest {
  private static final int RED = 0xC02020;
  private static final int GREEN = 0x208020;
  private static final int BLUE = 0x2020C0;

  /** A plot of a discharge with axes from 0 to 3000 mAh and 2.5 to 4.5 V. */
  static DrawnPlot discharge() {
    return new DrawnPlot()
        .x(0, 3000)
        .y(2.5, 4.5)
        .ticksX(0, 500, 1000, 1500, 2000, 2500, 3000)
        .ticksY(2.5, 3.0, 3.5, 4.0, 4.5)
        .titleX("Discharge Capacity (mAh)")
        .titleY("Voltage / V");
  }

  private static double falling(double x, double top) {
    return top - 0.0003 * x - Math.max(0, x - 2500) * 0.0008;
  }

  private static DrawnPlot threeCurves() {
    return discharge()
        .curve(RED, 0, 2900, x -> falling(x, 4.2))
        .curve(GREEN, 0, 2850, x -> falling(x, 4.05))
        .curve(BLUE, 0, 2800, x -> falling(x, 3.9));
  }

  private static Chart read(DrawnPlot drawn) {
    return new ChartReader().read(drawn.plot());
  }

  @Test
  void readsADischargeWithALegend() {
    Chart chart =
        read(
            threeCurves()
                .heading("Discharge characteristics (by rate, at 25°C)")
                .entry(DrawnPlot.style(BLUE), "2C (5800mA)", 330, 110)
                .entry(DrawnPlot.style(RED), "0.2C (580mA)", 330, 118)
                .entry(DrawnPlot.style(GREEN), "1C (2900mA)", 330, 126));
    assertEquals("discharge", chart.kind());
    assertEquals("Discharge characteristics (by rate, at 25°C)", chart.title());
    assertEquals(List.of(), chart.findings());
    List<Curve> curves = chart.curves();
    assertEquals(
        List.of("0.2C (580mA)", "1C (2900mA)", "2C (5800mA)"),
        curves.stream().map(Curve::label).toList());
    Curve slow = curves.get(0);
    assertEquals(Standing.READ, slow.standing(), slow.doubts().toString());
    assertEquals(0.2, slow.conditions().get(Conditions.DISCHARGE_RATE));
    assertEquals(0.58, slow.conditions().get(Conditions.DISCHARGE_CURRENT));
    assertEquals(25, slow.conditions().get(Conditions.TEMPERATURE));
    assertEquals("capacity", slow.x().quantity());
    assertEquals("A.h", slow.x().unit());
    assertEquals("voltage", slow.y().quantity());
    List<Double> first = slow.points().get(0);
    List<Double> last = slow.points().get(slow.points().size() - 1);
    assertEquals(0, first.get(0), slow.uncertainty().x());
    assertEquals(4.2, first.get(1), slow.uncertainty().y());
    assertEquals(2.9, last.get(0), slow.uncertainty().x());
    assertEquals(falling(2900, 4.2), last.get(1), slow.uncertainty().y());
    assertTrue(slow.uncertainty().y() < 0.003, () -> "uncertainty " + slow.uncertainty());
    assertTrue(slow.points().size() < 20, () -> slow.points().size() + " points");
  }
}
