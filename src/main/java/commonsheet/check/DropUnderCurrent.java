package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The voltage that the greatest continuous current loses in the stated resistance. From the full
 * voltage less than nothing would be left down to the cut-off: impossible. From the nominal voltage
 * so: the current could be given for a moment only.
 */
final class DropUnderCurrent extends NamedRule {
  private static final double MILLI = 1000;
  private final String from;

  private DropUnderCurrent(String id, Severity severity, String source, String from) {
    super(id, severity, source);
    this.from = from;
  }

  static DropUnderCurrent impossible() {
    return new DropUnderCurrent(
        "resistance/impossible-drop",
        Severity.ERROR,
        "physical limit: Ohm's law from the full voltage to the cut-off",
        "chargeVoltage");
  }

  static DropUnderCurrent implausible() {
    return new DropUnderCurrent(
        "resistance/drop", Severity.WARNING, "Ohm's law; " + COMMON_PRACTICE, "nominalVoltage");
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    CellFacts facts = new CellFacts(record);
    Optional<Known> top = facts.known(from);
    Optional<Known> cutoff = facts.known("dischargeCutoffVoltage");
    Optional<Known> dc = facts.known("internalResistanceDC");
    Optional<Known> resistance = dc.isPresent() ? dc : facts.known("internalResistanceAC");
    Optional<Statement> current =
        Readings.of(record, "maximumContinuousDischargeCurrent").stream()
            .filter(s -> s.value() != null)
            .max(Comparator.comparingDouble(Statement::value));
    if (top.isEmpty() || cutoff.isEmpty() || resistance.isEmpty() || current.isEmpty()) {
      return Stream.empty();
    }
    double drop = current.get().value() * resistance.get().range().low() / MILLI;
    double room = top.get().range().high() - cutoff.get().range().low();
    if (drop <= room || room <= 0) {
      return Stream.empty();
    }
    List<String> about = new ArrayList<>(List.of(current.get().id()));
    about.addAll(resistance.get().from());
    return Stream.of(
        finding(
            about,
            "The "
                + Wording.name(current.get())
                + " of "
                + Wording.valueAndPage(current.get())
                + " would lose "
                + commonsheet.quantity.PlainNumber.of(drop, 3)
                + " V in the stated resistance of "
                + resistance.get().range().text(3)
                + " mΩ, and from the "
                + (from.equals("chargeVoltage") ? "charge" : "nominal")
                + " voltage to the cut-off there are only "
                + commonsheet.quantity.PlainNumber.of(room, 3)
                + " V; look at the current, the resistance and their units."));
  }
}
