package commonsheet.discharge;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.List;
import java.util.Optional;

/**
 * The voltage at which a discharge ends.
 *
 * @param voltage in V
 * @param from the statement that says so; null where the chart itself does
 */
public record CutOff(double voltage, Statement from) {
  /** Voltages that are the same for this purpose, in V: sheets print them to the hundredth. */
  static final double SAME = 0.005;

  /**
   * That of a curve: the one its chart names, else the one the sheet states. A sheet that states
   * several leaves it open, since a capacity to another cut-off is another capacity.
   */
  public static Optional<CutOff> of(Curve curve, CellRecord record) {
    Double own = curve.conditions().get(Conditions.CUTOFF_VOLTAGE);
    if (own != null) {
      return Optional.of(new CutOff(own, null));
    }
    List<Statement> stated =
        record.statements().stream()
            .filter(s -> s.quantity().equals("dischargeCutoffVoltage") && s.value() != null)
            .filter(s -> s.standing() != Standing.REJECTED)
            .filter(s -> s.evidence().method() != Method.DERIVED)
            .toList();
    boolean one = stated.stream().allMatch(s -> Math.abs(s.value() - stated.get(0).value()) < SAME);
    return stated.isEmpty() || !one
        ? Optional.empty()
        : Optional.of(new CutOff(stated.get(0).value(), stated.get(0)));
  }
}
