package commonsheet.export.report;

import commonsheet.compare.Condition;
import commonsheet.compare.Load;
import commonsheet.compare.Requirement;
import commonsheet.compare.Verdict;
import commonsheet.export.Printed;
import commonsheet.quantity.PlainNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What cells are compared at and asked for, in sentences for people. */
final class ConditionWords {
  private static final int DIGITS = 3;

  private ConditionWords() {}

  /** Such as {@code 6.5 A for 90 % of the time and 15 A for 10 %, peak 15 A}. */
  static String load(Load load) {
    String text =
        load.isConstant()
            ? amperes(load.shares().get(0).current())
            : load.shares().stream()
                .map(s -> amperes(s.current()) + " for " + number(s.time() * 100) + " %")
                .collect(Collectors.joining(", "))
                + " of the time";
    double highest = load.shares().get(load.shares().size() - 1).current();
    return load.peak() > highest ? text + ", with peaks of " + amperes(load.peak()) : text;
  }

  /** Such as {@code 7.8 A per cell, to 3 V, at 23 °C}. */
  static String condition(Condition condition) {
    List<String> parts = new ArrayList<>();
    parts.add(load(condition.load()) + " per cell");
    if (!condition.load().isConstant()) {
      parts.add("on average " + amperes(condition.load().averageCurrent()));
    }
    parts.add("to " + Printed.shown(condition.cutoffVoltage()) + " V");
    parts.add("at " + Printed.shown(condition.temperature()) + " °C");
    if (condition.reserve() > 0) {
      parts.add("with " + number(condition.reserve() * 100) + " % of the charge kept in reserve");
    }
    return String.join(", ", parts);
  }

  /** How far a sheet's condition may be from that of the comparison. */
  static String tolerance(Condition condition) {
    return "Conditions count as the same within "
        + Printed.shown(condition.tolerance().voltage())
        + " V and "
        + Printed.shown(condition.tolerance().temperature())
        + " K.";
  }

  /** What the machine asks for and what follows for each cell. */
  static String requirement(Requirement asked) {
    return "The machine draws "
        + amperes(asked.averageCurrent())
        + " on average and "
        + amperes(asked.peakCurrent())
        + " at its peak, from "
        + (asked.packs() == 1 ? "one pack" : asked.packs() + " packs in parallel")
        + " of "
        + asked.series()
        + " cells in series times "
        + asked.parallel()
        + " in parallel. Each cell must be rated for at least "
        + amperes(asked.ratingPerCell())
        + ": the larger of "
        + number(asked.factor())
        + " times the average and the peak, shared among "
        + asked.sharing()
        + (asked.sharing() == 1 ? " cell." : " cells.");
  }

  /** How many cells have which verdict, such as {@code 3 carry the current, 1 is a near miss}. */
  static String verdicts(Report report) {
    List<String> parts = new ArrayList<>();
    for (Verdict verdict : Verdict.values()) {
      long count =
          report.cells().stream().filter(c -> c.contender().verdict() == verdict).count();
      if (count > 0) {
        parts.add(count + " " + words(verdict, count == 1));
      }
    }
    return parts.isEmpty() ? "There are no cells to compare." : String.join(", ", parts) + '.';
  }

  private static String words(Verdict verdict, boolean one) {
    return switch (verdict) {
      case CARRIES -> one ? "cell carries the current" : "cells carry the current";
      case NEAR_MISS -> one ? "is a near miss" : "are near misses";
      case NOT_KNOWN -> one ? "has no known rating" : "have no known rating";
      case FAILS -> one ? "fails" : "fail";
    };
  }

  /** A margin as a percentage with its sign, such as {@code +20 %}; empty where it is not known. */
  static String margin(Double margin) {
    if (margin == null) {
      return "";
    }
    String percent = PlainNumber.of(Math.rint(margin * 1000) / 10, DIGITS);
    return (margin > 0 ? "+" : "") + percent.replace('-', '−') + " %";
  }

  static String amperes(double current) {
    return number(current) + " A";
  }

  static String number(double value) {
    return PlainNumber.of(value, DIGITS);
  }
}
