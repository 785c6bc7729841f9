package commonsheet.export;

import commonsheet.compare.Condition;
import commonsheet.compare.Contender;
import commonsheet.compare.Load;
import commonsheet.compare.Requirement;
import commonsheet.compare.Shortlist;
import commonsheet.compare.Verdict;
import commonsheet.quantity.PlainNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a shortlist compares and asks, as sentences. */
public final class ShortlistWords {
  private static final int DIGITS = 3;
  private static final int MOST_SHARES = 3;
  private static final double PERCENT = 100;

  private ShortlistWords() {}

  /** The condition, such as {@code 7.8 A on each cell, down to 3 V, at 23 °C}. */
  public static String condition(Condition condition) {
    return load(condition.load())
        + " on each cell, down to "
        + number(condition.cutoffVoltage())
        + " V, at "
        + number(condition.temperature())
        + " °C"
        + (condition.reserve() > 0
            ? ", with " + number(condition.reserve() * PERCENT) + " % kept in reserve"
            : "");
  }

  /** A load, such as {@code 13 A for 90 % and 30 A for 10 % of the time}. */
  public static String load(Load load) {
    List<Load.Share> shares = load.shares();
    if (load.isConstant()) {
      double current = shares.get(0).current();
      return number(current)
          + " A"
          + (load.peak() > current ? " with a peak of " + number(load.peak()) + " A" : "");
    }
    if (shares.size() > MOST_SHARES) {
      return "a mix of "
          + shares.size()
          + " currents from "
          + number(shares.get(0).current())
          + " to "
          + number(shares.get(shares.size() - 1).current())
          + " A, on average "
          + number(load.averageCurrent())
          + " A with a peak of "
          + number(load.peak())
          + " A";
    }
    List<String> parts = new ArrayList<>();
    for (Load.Share share : shares) {
      parts.add(number(share.current()) + " A for " + number(share.time() * PERCENT) + " %");
    }
    return String.join(", ", parts.subList(0, parts.size() - 1))
        + " and "
        + parts.get(parts.size() - 1)
        + " of the time";
  }

  /** What the machine asks, a sentence each; what each cell must be rated for comes last. */
  public static List<String> asked(Shortlist shortlist) {
    Requirement machine = shortlist.requirement();
    if (machine == null) {
      return List.of(
          "Each cell must be rated for " + number(shortlist.condition().load().peak()) + " A.");
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "The machine draws "
            + number(machine.averageCurrent())
            + " A on average"
            + (machine.peakCurrent() > machine.averageCurrent()
                ? " and " + number(machine.peakCurrent()) + " A at its peak"
                : ", with no higher peak given,")
            + " from "
            + packs(machine)
            + ", so that "
            + machine.sharing()
            + (machine.sharing() == 1 ? " cell carries" : " cells share")
            + " the current.");
    boolean byAverage = machine.factor() * machine.averageCurrent() >= machine.peakCurrent();
    sentences.add(
        "Each cell must be rated for at least "
            + number(machine.ratingPerCell())
            + " A: "
            + (byAverage ? number(machine.factor()) + " times the average" : "the peak")
            + (machine.sharing() == 1 ? "" : ", shared")
            + ". That the rating be the larger of "
            + number(machine.factor())
            + " times the average and the peak is common practice, and a minimum.");
    return sentences;
  }

  /** The build, such as {@code 2 packs of 4s1p}. */
  public static String packs(Requirement machine) {
    return (machine.packs() == 1 ? "1 pack" : machine.packs() + " packs")
        + " of "
        + machine.series()
        + "s"
        + machine.parallel()
        + "p";
  }

  /** What the figures of all packs together count in; null where no machine is given. */
  public static String together(Shortlist shortlist) {
    Requirement machine = shortlist.requirement();
    if (machine == null) {
      return null;
    }
    double reserve = shortlist.condition().reserve();
    return "All of "
        + packs(machine)
        + " together; "
        + (reserve > 0
            ? "a reserve of " + number(reserve * PERCENT) + " % stays in the cells"
            : "down to the cut-off without a reserve")
        + (machine.massAllowance() > 0
            ? "; wiring and casing add " + number(machine.massAllowance() * PERCENT) + " %"
            : "; masses without wiring and casing")
        + (machine.cruiseSpeed() == null
            ? "."
            : "; distance at " + number(machine.cruiseSpeed()) + " km/h.");
  }

  /** How many carry the current, and which comes nearest where none does. */
  public static String outcome(Shortlist shortlist) {
    int all = shortlist.contenders().size();
    long carry =
        shortlist.contenders().stream().filter(c -> c.verdict() == Verdict.CARRIES).count();
    String ranked =
        " Ranked by "
            + shortlist.rankedBy().title().toLowerCase(Locale.ROOT)
            + ", "
            + (shortlist.rankedBy().lessIsBetter() ? "least" : "most")
            + " first.";
    if (carry > 0) {
      String carrying = carry == 1 ? " carries" : " carry";
      return (all == carry
              ? (all == 1 ? "The cell" : "All " + all + " cells") + carrying
              : carry + " of " + all + " cells" + carrying)
          + " it."
          + ranked;
    }
    Contender nearest = nearest(shortlist);
    return "No cell "
        + (all == 1 ? "" : "of " + all + " ")
        + "carries it"
        + (nearest == null
            ? ", as far as is known."
            : "; the nearest is " + CellName.of(nearest) + ": " + nearest.reason() + ".");
  }

  private static Contender nearest(Shortlist shortlist) {
    Contender nearest = null;
    for (Contender each : shortlist.contenders()) {
      if (each.margin() != null && (nearest == null || each.margin() > nearest.margin())) {
        nearest = each;
      }
    }
    return nearest;
  }

  private static String number(double value) {
    return PlainNumber.of(value, DIGITS);
  }
}
