package commonsheet.cli;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.Curve;
import java.util.Locale;
import java.util.stream.Collectors;

/** A curve on one line, with the names and units that records use. */
final class CurveLine {
  private static final int DIGITS = 4;

  private CurveLine() {}

  /**
   * Such as {@code c1 "1C" (dischargeRate 1): capacity 0 to 2.5 A.h ±0.01, voltage 2.5 to 4.1 V
   * ±0.004 — read}.
   */
  static String of(Curve curve) {
    return curve.id()
        + (curve.label() == null ? "" : " \"" + curve.label() + "\"")
        + conditions(curve)
        + ": "
        + axis(curve.x(), curve, 0, curve.uncertainty().x())
        + ", "
        + axis(curve.y(), curve, 1, curve.uncertainty().y())
        + " — "
        + curve.standing().name().toLowerCase(Locale.ROOT);
  }

  private static String conditions(Curve curve) {
    return curve.conditions().isEmpty()
        ? ""
        : curve.conditions().values().entrySet().stream()
            .map(condition -> condition.getKey() + " " + number(condition.getValue()))
            .collect(Collectors.joining(", ", " (", ")"));
  }

  private static String axis(Curve.Axis axis, Curve curve, int index, double uncertainty) {
    double least = curve.points().stream().mapToDouble(p -> p.get(index)).min().orElse(0);
    double most = curve.points().stream().mapToDouble(p -> p.get(index)).max().orElse(0);
    return axis.quantity()
        + " "
        + number(least)
        + " to "
        + number(most)
        + (axis.unit().equals("1") ? "" : " " + axis.unit())
        + " ±"
        + PlainNumber.of(uncertainty, 2);
  }

  private static String number(double value) {
    return PlainNumber.of(value, DIGITS);
  }
}
