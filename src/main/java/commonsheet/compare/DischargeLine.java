package commonsheet.compare;

import java.util.List;

/**
 * One discharge at a constant current that figures are computed from, down to the cut-off asked for
 * or as far as it goes.
 *
 * @param curve id of the record's curve
 * @param current in A
 * @param temperature in °C, or null where the chart does not say
 * @param charge given up to each point, in A.h, ascending
 * @param voltage at each point, in V
 * @param unsure whether the curve, or the current taken for its rate, is in doubt
 */
public record DischargeLine(
    String curve,
    double current,
    Double temperature,
    List<Double> charge,
    List<Double> voltage,
    boolean unsure) {
  public DischargeLine {
    charge = List.copyOf(charge);
    voltage = List.copyOf(voltage);
  }
}
