package commonsheet.compare;

import static commonsheet.compare.StatedFigures.number;

import commonsheet.discharge.Estimate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a cell gives under a load of several currents, until the voltage under the highest of them
 * first falls to the cut-off, which is when electronics switch off. That voltage is the one of a
 * discharge at that current alone, so it ends rather too early. The most it can give is what
 * Peukert's law taken to changing currents allows: each uses up its part of the capacity that the
 * cell has at it (common practice, no source).
 *
 * @param capacity in A.h
 * @param energy in W.h
 * @param meanVoltage in V, weighted by charge
 * @param parts the discharges at its currents; none where one of them is not known
 * @param reason why there are none, or null
 */
record MixedDelivery(
    Figure capacity, Figure energy, Figure meanVoltage, List<Part> parts, String reason) {
  /** Charge drawn outside the curves up to this share is counted as if at their nearest current. */
  private static final double LITTLE = 0.05;

  /**
   * A current of the load.
   *
   * @param current in A, above 0
   * @param time share of the time
   */
  record Part(double current, double time, Discharge discharge) {}

  static MixedDelivery of(Load load, Deliveries deliveries) {
    List<Load.Share> drawing = load.shares().stream().filter(s -> s.current() > 0).toList();
    if (drawing.isEmpty()) {
      Figure none = Figure.absent("no current is drawn");
      return new MixedDelivery(none, none, none, List.of(), "no current is drawn");
    }
    if (drawing.size() == 1) {
      Delivery only = deliveries.at(drawing.get(0).current());
      List<Part> parts =
          only.discharge() == null
              ? List.of()
              : List.of(
                  new Part(drawing.get(0).current(), drawing.get(0).time(), only.discharge()));
      return new MixedDelivery(
          only.capacity(), only.energy(), only.meanVoltage(), parts, only.reason());
    }
    return mixed(load, drawing, deliveries);
  }

  private static MixedDelivery mixed(Load load, List<Load.Share> drawing, Deliveries deliveries) {
    double average = load.averageCurrent();
    RateFamily family = deliveries.family().orElse(null);
    double above = outside(drawing, family, true) / average;
    double below = outside(drawing, family, false) / average;
    if (family == null || above > LITTLE || below > LITTLE) {
      return bound(drawing, deliveries);
    }
    List<String> notes = new ArrayList<>();
    List<Part> parts = new ArrayList<>();
    for (Load.Share share : drawing) {
      double current =
          family.isAbove(share.current())
              ? family.highest().current()
              : family.isBelow(share.current()) ? family.lowest().current() : share.current();
      parts.add(new Part(share.current(), share.time(), family.at(current)));
    }
    Part hardest = parts.get(parts.size() - 1);
    notes.add(
        "until the voltage of a discharge at "
            + number(hardest.current())
            + " A alone falls to the cut-off, so rather too little");
    notes.add("its upper bound lets each current use up its part of the capacity at that current");
    if (above > 0) {
      notes.add(outsideNote(above, "above", "highest", family.highest()));
    }
    if (below > 0) {
      notes.add(outsideNote(below, "below", "lowest", family.lowest()));
    }
    return figures(parts, average, notes, above + below > 0);
  }

  private static String outsideNote(double share, String side, String end, Discharge nearest) {
    return number(100 * share)
        + " % of the charge is drawn "
        + side
        + " "
        + number(nearest.current())
        + " A, the "
        + end
        + " current of the curves, and counted as at that one";
  }

  private static MixedDelivery figures(
      List<Part> parts, double average, List<String> notes, boolean outside) {
    Estimate end = parts.get(parts.size() - 1).discharge().capacity();
    double used = 0;
    double energy = 0;
    double ownLow = 0;
    double below = 0;
    double above = 0;
    Set<String> from = new LinkedHashSet<>();
    Set<String> doubts = new LinkedHashSet<>();
    for (Part part : parts) {
      double share = part.time() * part.current() / average;
      Discharge discharge = part.discharge();
      Estimate mean = discharge.meanVoltage();
      used += share / discharge.capacity().high();
      energy +=
          share * discharge.profile().energyTo(Math.min(end.value(), discharge.profile().end()));
      ownLow += share * mean.low();
      below += share * (mean.value() - mean.low());
      above += share * (mean.high() - mean.value());
      from.addAll(discharge.from());
      doubts.addAll(discharge.doubts());
    }
    notes.addAll(doubts);
    boolean unsure = outside || !doubts.isEmpty();
    double most = Math.max(end.high(), 1 / used);
    double mean = energy / end.value();
    List<String> ids = List.copyOf(from);
    Estimate capacity = new Estimate(end.value(), end.low(), most);
    // The mean voltage of a discharge that goes on for longer is lower.
    Estimate voltage = new Estimate(mean, Math.min(mean - below, ownLow), mean + above);
    Estimate work =
        new Estimate(energy, (mean - below) * end.low(), Math.max(energy, (mean + above) * most));
    return new MixedDelivery(
        figure(capacity, ids, notes, unsure),
        figure(work, ids, notes, unsure),
        figure(voltage, ids, notes, unsure),
        parts,
        null);
  }

  private static Figure figure(
      Estimate estimate, List<String> from, List<String> notes, boolean unsure) {
    return new Figure(
        estimate.value(),
        estimate.low(),
        estimate.high(),
        Origin.INTERPOLATED,
        from,
        notes,
        unsure);
  }

  private static double outside(List<Load.Share> drawing, RateFamily family, boolean above) {
    return family == null
        ? 0
        : drawing.stream()
            .filter(s -> above ? family.isAbove(s.current()) : family.isBelow(s.current()))
            .mapToDouble(s -> s.current() * s.time())
            .sum();
  }

  /** Drawn all at its lowest current it would give most, all at its highest least. */
  private static MixedDelivery bound(List<Load.Share> drawing, Deliveries deliveries) {
    Delivery easiest = deliveries.at(drawing.get(0).current());
    Delivery hardest = deliveries.at(drawing.get(drawing.size() - 1).current());
    String reason = hardest.discharge() == null ? hardest.reason() : easiest.reason();
    return new MixedDelivery(
        bound(hardest.capacity(), easiest.capacity(), reason),
        bound(hardest.energy(), easiest.energy(), reason),
        Figure.absent(reason),
        List.of(),
        reason);
  }

  private static Figure bound(Figure least, Figure most, String reason) {
    if (least.low() == null && most.high() == null) {
      return Figure.absent(reason);
    }
    List<String> notes = new ArrayList<>(List.of(reason));
    if (least.low() != null) {
      notes.add("at least what the highest current alone gives");
      notes.addAll(least.notes());
    }
    if (most.high() != null) {
      notes.add("at most what the lowest current alone gives");
      notes.addAll(most.notes());
    }
    return new Figure(
        null,
        least.low(),
        most.high(),
        Origin.BOUNDED,
        LoadFigures.joined(least.from(), most.from()),
        LoadFigures.joined(notes, List.of()),
        least.unsure() || most.unsure());
  }
}
