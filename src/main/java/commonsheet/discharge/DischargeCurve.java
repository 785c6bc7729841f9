package commonsheet.discharge;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** A discharge curve as voltage over the charge given, with straight pieces between its points. */
public final class DischargeCurve {
  public static final String AMPERE_HOURS = "A.h";
  private static final double SECONDS_PER_HOUR = 3600;

  /**
   * How much of the charge may be missing at the start of a curve, as a share: lines are drawn to
   * the frame of a chart or begin a little beside it.
   */
  private static final double LATE_START = 0.02;

  private final Curve curve;
  private final CutOff cutOff;
  private final double[] charge;
  private final double[] voltage;
  private final String unit;
  private final double errorCharge;

  private DischargeCurve(Curve curve, CutOff cutOff, double perUnit) {
    this.curve = curve;
    this.cutOff = cutOff;
    this.charge = curve.xValues();
    for (int i = 0; i < charge.length; i++) {
      charge[i] *= perUnit;
    }
    this.voltage = curve.yValues();
    this.unit = curve.x().unit().equals("%") ? "%" : AMPERE_HOURS;
    this.errorCharge = curve.uncertainty().x() * perUnit;
  }

  /**
   * Every discharge of a sheet whose load and cut-off are known, in the order of its curves. What
   * the user measured is none of the sheet's.
   */
  public static List<DischargeCurve> of(CellRecord record) {
    return record.curves().stream()
        .filter(curve -> curve.method() != Method.MEASURED)
        .flatMap(curve -> CutOff.of(curve, record).flatMap(end -> of(curve, end)).stream())
        .toList();
  }

  /**
   * A curve as a discharge to a cut-off; nothing for a curve of another kind, for one whose load is
   * not known, and for one that a person rejected.
   */
  public static Optional<DischargeCurve> of(Curve curve, CutOff cutOff) {
    boolean discharge =
        curve.kind().startsWith("discharge") && curve.y().quantity().equals("voltage");
    if (!discharge
        || !curve.y().unit().equals("V")
        || !knowsItsLoad(curve.conditions())
        || curve.standing() == Standing.REJECTED) {
      return Optional.empty();
    }
    double perUnit = chargePerUnit(curve);
    if (Double.isNaN(perUnit)) {
      return Optional.empty();
    }
    return Optional.of(new DischargeCurve(curve, cutOff, perUnit));
  }

  private static boolean knowsItsLoad(Conditions conditions) {
    return conditions.get(Conditions.DISCHARGE_CURRENT) != null
        || conditions.get(Conditions.DISCHARGE_RATE) != null;
  }

  /** What one unit of the x axis is in charge; not a number where it is none. */
  private static double chargePerUnit(Curve curve) {
    String unit = curve.x().unit();
    Double current = curve.conditions().get(Conditions.DISCHARGE_CURRENT);
    return switch (curve.x().quantity()) {
      case "capacity" -> unit.equals(AMPERE_HOURS) || unit.equals("%") ? 1 : Double.NaN;
      case "time" -> unit.equals("s") && current != null ? current / SECONDS_PER_HOUR : Double.NaN;
      default -> Double.NaN;
    };
  }

  /** The curve of the record. */
  public Curve curve() {
    return curve;
  }

  /** Where its discharge ends. */
  public CutOff cutOff() {
    return cutOff;
  }

  /** The unit of its charge: {@code A.h}, or {@code %} for an axis of shares. */
  public String unit() {
    return unit;
  }

  /** How many points it has. */
  public int size() {
    return charge.length;
  }

  /** The charge given at a point, counted from 0, in {@link #unit}. */
  public double charge(int point) {
    return charge[point];
  }

  /** The voltage at a point, counted from 0, in V. */
  public double voltage(int point) {
    return voltage[point];
  }

  public String id() {
    return curve.id();
  }

  public Double condition(String name) {
    return curve.conditions().get(name);
  }

  /** Whether another curve is drawn in the same plot and counts to the same cut-off. */
  public boolean sharesPlotWith(DischargeCurve other) {
    Evidence mine = curve.evidence();
    Evidence theirs = other.curve.evidence();
    return Objects.equals(mine.page(), theirs.page())
        && mine.box().equals(theirs.box())
        && Objects.equals(mine.file(), theirs.file())
        && unit.equals(other.unit)
        && cutOff.voltage() == other.cutOff.voltage();
  }

  /** Whether both are discharged at one temperature, or neither says at which. */
  public boolean sharesTemperatureWith(DischargeCurve other) {
    return Stream.of(
            Conditions.TEMPERATURE, Conditions.TEMPERATURE_LOW, Conditions.TEMPERATURE_HIGH)
        .allMatch(name -> Objects.equals(condition(name), other.condition(name)));
  }

  /** Whether both are discharged by one current, told in the same way. */
  public boolean sharesLoadWith(DischargeCurve other) {
    return Stream.of(Conditions.DISCHARGE_RATE, Conditions.DISCHARGE_CURRENT)
        .allMatch(name -> Objects.equals(condition(name), other.condition(name)));
  }

  /** The charge given down to the cut-off; nothing for a curve that ends above it. */
  public Optional<Estimate> capacity() {
    double end = chargeAt(cutOff.voltage());
    if (Double.isNaN(end)) {
      end = endsAtCutOff() ? charge[charge.length - 1] : Double.NaN;
    }
    if (Double.isNaN(end) || end <= 0) {
      return Optional.empty();
    }
    double before = end - chargeAt(cutOff.voltage() + curve.uncertainty().y());
    double after = chargeAt(cutOff.voltage() - curve.uncertainty().y()) - end;
    double early = Math.max(0, Double.isNaN(before) ? 0 : before);
    double late = Math.max(0, Double.isNaN(after) ? early : after);
    return Optional.of(
        new Estimate(
            end, end - Math.hypot(errorCharge, early), end + Math.hypot(errorCharge, late)));
  }

  /**
   * The line of a chart can end a hair above the cut-off that it stands for; by half its width more
   * where the chart names that very cut-off, since the steep end of a line is all edge.
   */
  private boolean endsAtCutOff() {
    Double named = curve.conditions().get(Conditions.CUTOFF_VOLTAGE);
    boolean isNamed = named != null && Math.abs(named - cutOff.voltage()) < CutOff.SAME;
    double hair = curve.uncertainty().y() * (isNamed ? 2 : 1);
    return voltage[voltage.length - 1] <= cutOff.voltage() + hair;
  }

  /**
   * The energy given down to the cut-off, in W.h: voltage over charge by trapezia, which is exact
   * for straight pieces. Nothing for a curve that starts late or whose charge is a share.
   */
  public Optional<Estimate> energy(Estimate capacity) {
    double start = charge[0];
    if (!unit.equals(AMPERE_HOURS) || start > LATE_START * capacity.value() + errorCharge) {
      return Optional.empty();
    }
    // Up to its first point the curve is taken as level.
    double sum = Math.max(0, start) * voltage[0];
    for (int i = 1; i < charge.length && charge[i - 1] < capacity.value(); i++) {
      double from = Math.max(0, charge[i - 1]);
      double to = Math.min(capacity.value(), charge[i]);
      if (to > from) {
        sum += (to - from) * (alongPiece(i, from) + alongPiece(i, to)) / 2;
      }
    }
    double byVoltage = curve.uncertainty().y() * capacity.value();
    double low = Math.hypot(byVoltage, cutOff.voltage() * (capacity.value() - capacity.low()));
    double high = Math.hypot(byVoltage, cutOff.voltage() * (capacity.high() - capacity.value()));
    return Optional.of(new Estimate(sum, sum - low, sum + high));
  }

  /** The voltage when half of the charge is given, in V; nothing for a curve that starts later. */
  public Optional<Estimate> midCapacityVoltage(Estimate capacity) {
    double half = capacity.value() / 2;
    double offset = Math.hypot(errorCharge, capacity.halfWidth() / 2);
    double middle = voltageAt(half);
    double before = voltageAt(half - offset);
    double after = voltageAt(half + offset);
    if (Double.isNaN(middle) || Double.isNaN(before) || Double.isNaN(after)) {
      return Optional.empty();
    }
    double slope = Math.abs(before - after) / 2;
    return Optional.of(Estimate.within(middle, Math.hypot(curve.uncertainty().y(), slope)));
  }

  /** Where the voltage first falls to a level; not a number where it never does. */
  private double chargeAt(double level) {
    for (int i = 1; i < voltage.length; i++) {
      double above = voltage[i - 1];
      double below = voltage[i];
      if (above > level && below <= level) {
        double share = (above - level) / (above - below);
        return charge[i - 1] + share * (charge[i] - charge[i - 1]);
      }
    }
    return Double.NaN;
  }

  /** The voltage at a charge; not a number beyond the ends. */
  private double voltageAt(double wanted) {
    for (int i = 1; i < charge.length; i++) {
      if (charge[i - 1] <= wanted && wanted <= charge[i]) {
        return alongPiece(i, wanted);
      }
    }
    return Double.NaN;
  }

  /** The voltage between a point and the one before it. */
  private double alongPiece(int point, double wanted) {
    double from = charge[point - 1];
    double to = charge[point];
    double share = to > from ? (wanted - from) / (to - from) : 0;
    return voltage[point - 1] + share * (voltage[point] - voltage[point - 1]);
  }
}
