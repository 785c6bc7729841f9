package commonsheet.chart.derived;

import commonsheet.discharge.ReferenceCapacity;
import commonsheet.quantity.PlainNumber;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Finding;
import commonsheet.record.Method;
import commonsheet.record.Severity;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * How well what curves give agrees with what the sheet prints, and with other curves. What comes
 * from an unsure curve is not compared: its condition may be another.
 */
final class Agreement {
  private static final String PRINTED = "agreement/printed";
  private static final String CURVES = "agreement/curves";
  private static final String SHARES = "agreement/percent-axis";
  private static final String SHARPNESS = "curve/peukert-exponent";

  /** The rules whose findings this class makes. */
  static final Set<String> RULES = Set.of(PRINTED, CURVES, SHARES, SHARPNESS);

  private static final Set<String> COMPARED = Set.of("capacity", "energy", "capacityRetention");

  private static final String PRACTICE = "common practice, no source";

  /** Where k lies for lithium-ion cells; outside, the cell warms itself or the curves are wrong. */
  private static final double LEAST_K = 1.0;

  private static final double GREATEST_K = 1.15;
  private static final String K_SOURCE =
      "1.02 to 1.06 fitted to open measurements (doi 10.1149/2.0122001JES, doi"
          + " 10.5281/zenodo.2580327); 1.00 to 1.15 by judgement";

  private Agreement() {}

  /** The findings, in the order of the statements from curves. */
  static List<Finding> findings(CellRecord record, List<Statement> statements) {
    List<Statement> derived =
        statements.stream()
            .filter(DerivedFigures::isFromCurves)
            .filter(s -> s.standing() != Standing.REJECTED && s.standing() != Standing.UNSURE)
            .toList();
    List<Statement> printed =
        record.statements().stream()
            .filter(s -> s.evidence().method() != Method.DERIVED)
            .filter(s -> s.standing() != Standing.REJECTED)
            .toList();
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < derived.size(); i++) {
      Statement one = derived.get(i);
      withPrinted(one, printed, findings);
      for (Statement other : derived.subList(i + 1, derived.size())) {
        withCurve(one, other, findings);
      }
      sharpness(one, findings);
    }
    return findings;
  }

  private static void withPrinted(Statement one, List<Statement> printed, List<Finding> findings) {
    for (Statement other : printed) {
      if (COMPARED.contains(one.quantity())
          && other.quantity().equals(one.quantity())
          && SameCase.of(one.conditions(), other.conditions())) {
        findings.add(printed(one, other, Difference.of(one, other)));
      } else if (one.quantity().equals("capacityRetention")
          && other.quantity().equals("capacity")
          && one.evidence().from().stream().filter(id -> id.startsWith("c")).count() == 1
          && SameCase.of(one.conditions(), other.conditions())) {
        ReferenceCapacity.among(printed, other)
            .ifPresent(whole -> findings.add(share(one, other, whole)));
      }
    }
  }

  private static Finding printed(Statement one, Statement other, Difference difference) {
    String message =
        onCurves(one)
            + "; the sheet prints "
            + value(other)
            + place(other)
            + ": "
            + difference.sentence()
            + ".";
    return new Finding(
        PRINTED, difference.severity(), List.of(one.id(), other.id()), message, PRACTICE);
  }

  /** A share read from a percent axis against the share that two printed capacities give. */
  private static Finding share(Statement one, Statement part, Statement whole) {
    Difference difference = Difference.ofShare(one, part, whole);
    String message =
        onCurves(one)
            + "; the printed capacities "
            + value(part)
            + " and "
            + value(whole)
            + " make "
            + PlainNumber.of(100 * part.value() / whole.value(), 3)
            + " %: "
            + difference.sentence()
            + ".";
    return new Finding(
        SHARES, difference.severity(), List.of(one.id(), part.id(), whole.id()), message, PRACTICE);
  }

  /** Two charts of one sheet that show the same discharge. */
  private static void withCurve(Statement one, Statement other, List<Finding> findings) {
    boolean same =
        one.quantity().equals("capacity")
            && other.quantity().equals("capacity")
            && SameCase.of(one.conditions(), other.conditions());
    if (!same) {
      return;
    }
    Difference difference = Difference.of(one, other);
    if (difference.severity() != Severity.NOTE) {
      String message =
          onCurves(one)
              + "; "
              + onCurves(other).replaceFirst("^C", "c")
              + ": "
              + difference.sentence()
              + ".";
      findings.add(
          new Finding(
              CURVES, difference.severity(), List.of(one.id(), other.id()), message, PRACTICE));
    }
  }

  private static void sharpness(Statement one, List<Finding> findings) {
    if (one.quantity().equals("peukertExponent")
        && (one.high() < LEAST_K || one.low() > GREATEST_K)) {
      findings.add(
          new Finding(
              SHARPNESS,
              Severity.WARNING,
              List.of(one.id()),
              "The capacities on "
                  + String.join(", ", one.evidence().from())
                  + " fall with the current by a Peukert exponent of "
                  + PlainNumber.of(one.value(), 4)
                  + ", outside 1.00 to 1.15; compare the curves with the chart and their labels.",
              K_SOURCE));
    }
  }

  private static String onCurves(Statement one) {
    return "Curve "
        + String.join(
            " against ", one.evidence().from().stream().filter(id -> id.startsWith("c")).toList())
        + " gives "
        + value(one)
        + " ("
        + conditions(one.conditions())
        + ")";
  }

  private static String conditions(Conditions conditions) {
    List<String> parts = new ArrayList<>();
    add(parts, conditions, Conditions.DISCHARGE_RATE, "", " C");
    if (parts.isEmpty()) {
      add(parts, conditions, Conditions.DISCHARGE_CURRENT, "", " A");
    }
    add(parts, conditions, Conditions.TEMPERATURE, "", " °C");
    add(parts, conditions, Conditions.CUTOFF_VOLTAGE, "to ", " V");
    return String.join(", ", parts);
  }

  private static void add(
      List<String> parts, Conditions conditions, String name, String before, String unit) {
    Double value = conditions.get(name);
    if (value != null) {
      parts.add(before + PlainNumber.of(value, 4) + unit);
    }
  }

  private static String value(Statement statement) {
    String unit =
        switch (statement.unit()) {
          case "A.h" -> " Ah";
          case "W.h" -> " Wh";
          default -> " " + statement.unit();
        };
    String statistic = statement.statistic() == null ? "" : " " + statement.statistic().label();
    String number =
        statement.value() == null
            ? PlainNumber.of(statement.low(), 4) + " to " + PlainNumber.of(statement.high(), 4)
            : PlainNumber.of(statement.value(), 4);
    return number + unit + statistic;
  }

  private static String place(Statement statement) {
    Integer page = statement.evidence().page();
    return page == null ? "" : " on page " + page;
  }
}
