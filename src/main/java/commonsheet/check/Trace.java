package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import java.util.List;
import java.util.Objects;

/** A discharge curve as voltage over the charge given, with straight pieces between its points. */
record Trace(Curve curve) {
  /**
   * The discharges of a record that say what they say: without those that a person rejected, those
   * whose condition is in doubt, and what users measured themselves.
   */
  static List<Trace> of(CellRecord record) {
    return record.curves().stream()
        .filter(c -> c.kind().startsWith("discharge") && c.x().quantity().equals("capacity"))
        .filter(c -> c.y().quantity().equals("voltage") && c.y().unit().equals("V"))
        .filter(c -> c.standing() != Standing.REJECTED && c.standing() != Standing.UNSURE)
        .filter(c -> c.method() != Method.MEASURED && c.points().size() > 1)
        .map(Trace::new)
        .toList();
  }

  String id() {
    return curve.id();
  }

  /** Its name for people: the label, else the id. */
  String name() {
    return curve.label() == null ? curve.id() : curve.id() + " \"" + curve.label() + "\"";
  }

  Double rate() {
    return curve.conditions().get(Conditions.DISCHARGE_RATE);
  }

  Double current() {
    return curve.conditions().get(Conditions.DISCHARGE_CURRENT);
  }

  Double temperature() {
    return curve.conditions().get(Conditions.TEMPERATURE);
  }

  double start() {
    return curve.points().get(0).get(0);
  }

  double end() {
    return last().get(0);
  }

  double lastVoltage() {
    return last().get(1);
  }

  private List<Double> last() {
    return curve.points().get(curve.points().size() - 1);
  }

  /** How far a charge may be off, in the unit of the axis. */
  double errorCharge() {
    return curve.uncertainty().x();
  }

  /** How far a voltage may be off, V. */
  double errorVoltage() {
    return curve.uncertainty().y();
  }

  /** Whether both are drawn in one plot, on one scale. */
  boolean sharesPlotWith(Trace other) {
    return Objects.equals(curve.evidence().page(), other.curve.evidence().page())
        && curve.evidence().box().equals(other.curve.evidence().box())
        && Objects.equals(curve.evidence().file(), other.curve.evidence().file())
        && curve.x().unit().equals(other.curve.x().unit());
  }

  /** Whether both run at one temperature, or neither says at which. */
  boolean sharesTemperatureWith(Trace other) {
    return Objects.equals(temperature(), other.temperature());
  }

  /** Whether both run at one load, told in one way. */
  boolean sharesLoadWith(Trace other) {
    return Objects.equals(rate(), other.rate()) && Objects.equals(current(), other.current());
  }

  /** Whether both end at one voltage, or do not say where. */
  boolean sharesCutoffWith(Trace other) {
    return Objects.equals(
        curve.conditions().get(Conditions.CUTOFF_VOLTAGE),
        other.curve.conditions().get(Conditions.CUTOFF_VOLTAGE));
  }

  /** Whether this one runs at a higher load; false where they do not tell it in one way. */
  boolean isHarderThan(Trace other) {
    if (rate() != null && other.rate() != null) {
      return rate() > other.rate();
    }
    return current() != null && other.current() != null && current() > other.current();
  }

  /** The voltage at a charge; not a number beyond the ends. */
  double voltageAt(double charge) {
    List<List<Double>> points = curve.points();
    for (int i = 1; i < points.size(); i++) {
      double from = points.get(i - 1).get(0);
      double to = points.get(i).get(0);
      if (from <= charge && charge <= to) {
        double share = to > from ? (charge - from) / (to - from) : 0;
        double before = points.get(i - 1).get(1);
        return before + share * (points.get(i).get(1) - before);
      }
    }
    return Double.NaN;
  }
}
