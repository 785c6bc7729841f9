package commonsheet.check;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The resistance by which the discharge curves of a family lie apart, against the stated one. It
 * holds what a pulse has not: it is above the resistance to 1 kHz, and not many times that.
 */
final class CurveResistance extends NamedRule {
  /**
   * Of the stated resistance. Measured: the resistance after 30 s is 1.6 times that after 0.5 s (30
   * A pulses, doi 10.5281/zenodo.2580327); the rest by judgement, since a stated maximum may be
   * twice what cells have.
   */
  private static final Interval SHARE = new Interval(0.4, 8);

  private static final double MILLI = 1000;

  CurveResistance() {
    super(
        "resistance/curves",
        Severity.WARNING,
        "1.6 times from 0.5 to 30 s in open measurements (doi 10.5281/zenodo.2580327); margins by"
            + " judgement");
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    CellFacts facts = new CellFacts(record);
    Optional<Known> dc = facts.known("internalResistanceDC");
    Optional<Known> stated = dc.isPresent() ? dc : facts.known("internalResistanceAC");
    Optional<Known> capacity = facts.capacity();
    if (stated.isEmpty()) {
      return Stream.empty();
    }
    List<Trace> traces = new ArrayList<>(Trace.of(record));
    traces.removeIf(t -> Double.isNaN(amperes(t, capacity)) || t.curve().x().unit().equals("%"));
    traces.sort(Comparator.comparingDouble(t -> amperes(t, capacity)));
    List<Finding> findings = new ArrayList<>();
    while (traces.size() > 1) {
      Trace first = traces.get(0);
      List<Trace> family =
          traces.stream()
              .filter(t -> t.sharesPlotWith(first) && t.sharesTemperatureWith(first))
              .toList();
      traces.removeAll(family);
      Trace last = family.get(family.size() - 1);
      double step = amperes(last, capacity) - amperes(first, capacity);
      double charge = Math.min(first.end(), last.end()) / 2;
      double ohms = (first.voltageAt(charge) - last.voltageAt(charge)) / step;
      double share = ohms * MILLI / stated.get().range().high();
      double least = ohms * MILLI / stated.get().range().low();
      if (step > 0
          && !Double.isNaN(ohms)
          && !new Interval(share, Math.max(share, least)).meets(SHARE)) {
        findings.add(finding(first, last, ohms * MILLI, stated.get()));
      }
    }
    return findings.stream();
  }

  private static double amperes(Trace trace, Optional<Known> capacity) {
    if (trace.current() != null) {
      return trace.current();
    }
    return trace.rate() == null || capacity.isEmpty()
        ? Double.NaN
        : trace.rate() * capacity.get().range().high();
  }

  private Finding finding(Trace first, Trace last, double milliohms, Known stated) {
    List<String> about = new ArrayList<>(List.of(first.id(), last.id()));
    about.addAll(stated.from());
    return finding(
        about,
        "Half-way, curves "
            + first.name()
            + " and "
            + last.name()
            + " lie apart by a resistance of "
            + PlainNumber.of(milliohms, 3)
            + " mΩ, where the sheet states "
            + stated.range().text(3)
            + " mΩ; compare the labels of the curves and the unit of the resistance with the"
            + " sheet.");
  }
}
