package commonsheet.layout;

import commonsheet.layout.Sentences.Direction;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.Qualifier;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads descriptions of a whole procedure ("constant current 0.5C, constant voltage 4.2 V, 0.01C
 * cut-off"), and what sentences mention in passing.
 */
final class Procedures {
  private static final String PROCEDURE = "procedure";
  private static final String MENTION = "mention";

  private final Sentences sentences;
  private final Statistics statistics;
  private final Naming naming;
  private final Candidates candidates;

  Procedures(Sentences sentences, Statistics statistics, Naming naming, Candidates candidates) {
    this.sentences = sentences;
    this.statistics = statistics;
    this.naming = naming;
    this.candidates = candidates;
  }

  /** The direction of the current that a quantity is about. */
  static Direction direction(String quantity) {
    return switch (quantity) {
      case "standardChargeCurrent",
          "maximumChargeCurrent",
          "chargeVoltage",
          "chargeCutoffCurrent",
          "chargeTemperature" ->
          Direction.CHARGE;
      case "internalResistanceAC", "mass", "storageTemperature" -> Direction.UNKNOWN;
      default -> Direction.DISCHARGE;
    };
  }

  List<Candidate> read(Entry entry, Entry.Value value, Procedure procedure) {
    boolean charging = procedure.all().contains("charge");
    List<Told> told =
        sentences.read(value.text().text(), charging ? Direction.CHARGE : Direction.DISCHARGE);
    List<Candidate> found = new ArrayList<>();
    List<Candidate> voltages = new ArrayList<>();
    List<Figure> currents = new ArrayList<>();
    for (Told t : told) {
      switch (t.part()) {
        case CHARGE_CURRENT, DISCHARGE_CURRENT, BOTH_CURRENTS -> {
          if (charging == (t.part() == Told.Part.CHARGE_CURRENT)) {
            currents.add(t.figure());
          }
        }
        case TAPER_CURRENT ->
            add(found, entry, PROCEDURE, value.text(), procedure.taper(), t, told);
        case CHARGE_VOLTAGE ->
            add(
                voltages,
                entry,
                PROCEDURE,
                value.text(),
                charging ? procedure.voltage() : null,
                t,
                told);
        case CUTOFF_VOLTAGE ->
            add(
                voltages,
                entry,
                PROCEDURE,
                value.text(),
                charging ? null : procedure.voltage(),
                t,
                told);
        default -> {}
      }
    }
    voltages.forEach(c -> found.add(c.asMention()));
    if (procedure.current() != null && !currents.isEmpty()) {
      Candidate current =
          current(entry, value, procedure.current(), Fit.preferAmperes(currents).get(0), told);
      // A fast discharge is a rating only where the sheet states none; a fast charge always is (see
      // the record model).
      boolean fastDischarge =
          procedure.all().contains("fast") && !charging && !names(entry, "current");
      found.add(fastDischarge ? current.asMention() : current);
    }
    return found;
  }

  private boolean names(Entry entry, String concept) {
    return naming.outer(entry).contains(concept);
  }

  private Candidate current(
      Entry entry, Entry.Value value, String quantity, Figure printed, List<Told> told) {
    List<Told> beside = sentences.read(value.conditions().text(), direction(quantity));
    List<Told> all = new ArrayList<>(told);
    all.addAll(beside);
    Figure figure = printed;
    Passage passage = value.text();
    Optional<Figure> amperes = amperesBeside(beside);
    if (printed.unit().dimension() == Dimension.RATE && amperes.isPresent()) {
      figure = amperes.get();
      passage = value.conditions();
    }
    Statistic statistic = statistics.of(quantity, figure, value.role(), naming.fromOutside(entry));
    return candidates.of(entry, PROCEDURE, passage, quantity, statistic, figure, all);
  }

  private static Optional<Figure> amperesBeside(List<Told> beside) {
    return beside.stream()
        .filter(t -> t.part() != Told.Part.TAPER_CURRENT)
        .map(Told::figure)
        .filter(f -> f.unit().dimension() == Dimension.CURRENT)
        .findFirst();
  }

  private void add(
      List<Candidate> found,
      Entry entry,
      String rule,
      Passage text,
      String quantity,
      Told told,
      List<Told> all) {
    if (quantity != null) {
      found.add(one(entry, rule, text, quantity, null, told, all));
    }
  }

  private Candidate one(
      Entry entry,
      String rule,
      Passage text,
      String quantity,
      Statistic statistic,
      Told told,
      List<Told> all) {
    List<Told> others = all.stream().filter(t -> !t.equals(told)).toList();
    return candidates.of(entry, rule, text, quantity, statistic, told.figure(), others);
  }

  private void mention(
      List<Candidate> found,
      Entry entry,
      Passage text,
      String quantity,
      Statistic statistic,
      Told told,
      List<Told> all) {
    found.add(one(entry, MENTION, text, quantity, statistic, told, all).asMention());
  }

  /** "Discharge: CC 0.5C, 2.5 V": the label says which way the current goes. */
  private Direction byLabel(Entry entry) {
    boolean charge = names(entry, "charge");
    boolean discharge = names(entry, "discharge");
    if (charge == discharge || names(entry, "storage") || names(entry, "capacity")) {
      return Direction.UNKNOWN;
    }
    return charge ? Direction.CHARGE : Direction.DISCHARGE;
  }

  /** End voltages, end currents, and currents that a sentence calls standard or maximum. */
  List<Candidate> mentions(Entry entry) {
    List<Candidate> found = new ArrayList<>();
    List<Passage> texts = new ArrayList<>();
    entry.values().forEach(v -> texts.add(v.text()));
    entry.values().forEach(v -> texts.add(v.conditions()));
    texts.add(entry.conditions());
    texts.add(entry.context());
    if (naming.isAbout(entry, "storage")) {
      return found; // kept at a voltage, recharged now and then: no rating
    }
    for (Passage text : texts) {
      List<Told> told = sentences.read(text.text(), byLabel(entry));
      for (Told t : told) {
        switch (t.part()) {
          case CUTOFF_VOLTAGE ->
              mention(found, entry, text, "dischargeCutoffVoltage", null, t, told);
          case CHARGE_VOLTAGE -> mention(found, entry, text, "chargeVoltage", null, t, told);
          case TAPER_CURRENT -> mention(found, entry, text, "chargeCutoffCurrent", null, t, told);
          case CHARGE_CURRENT -> {
            if (t.figure().qualifier() == Qualifier.MAXIMUM
                && t.figure().unit().dimension() == Dimension.CURRENT) {
              mention(found, entry, text, "maximumChargeCurrent", Statistic.MAXIMUM, t, told);
            }
          }
          case DISCHARGE_CURRENT -> {
            if (sentences.introducedBy(text.text(), t.figure(), "standard")) {
              mention(found, entry, text, "standardDischargeCurrent", Statistic.STANDARD, t, told);
            }
          }
          default -> {}
        }
      }
    }
    return found;
  }
}
