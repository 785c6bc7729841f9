package commonsheet.compare;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What a reader has to know who sets these cells side by side: a sentence each. */
final class Remarks {
  /**
   * A cut-off above this share of the nominal voltage lies on the plateau of iron phosphate and
   * titanate cells (3.0 V of 3.2 V are 0.94), where a small drop decides whether all or next to
   * nothing is delivered. For others it is 0.83 at the usual 3.0 V of 3.6 V.
   */
  private static final double PLATEAU = 0.88;

  /**
   * Nominal voltages below this are those of iron phosphate and titanate cells, 3.2 to 3.3 and 2.4
   * V; those of the others are 3.6 V and more (manufacturers' tables).
   */
  private static final double PHOSPHATE = 3.4;

  private static final int DIGITS = 4;

  /** More names than these make a sentence that nobody reads. */
  private static final int MOST_NAMES = 6;

  /** A cell with the curves that what it delivers comes from. */
  private record Seen(CellFigures cell, List<Curve> used) {
    static Seen of(CellFigures cell) {
      List<String> from = cell.figure(Measure.DELIVERED_CAPACITY).from();
      List<Curve> used = new ArrayList<>();
      for (Curve curve : cell.record().curves()) {
        if (from.contains(curve.id())) {
          used.add(curve);
        }
      }
      return new Seen(cell, used);
    }

    Double nominalVoltage() {
      return cell.figure(Measure.NOMINAL_VOLTAGE).value();
    }

    String name() {
      CellRecord record = cell.record();
      return record.cell() == null || record.cell().model() == null
          ? record.id()
          : record.cell().model();
    }
  }

  private final Condition condition;
  private final List<Seen> cells;
  private final List<String> sentences = new ArrayList<>();

  private Remarks(Condition condition, List<CellFigures> cells) {
    this.condition = condition;
    this.cells = cells.parallelStream().map(Seen::of).toList();
  }

  /** The remarks on cells, whose order does not matter. */
  static List<String> on(Condition condition, List<CellFigures> cells) {
    return new Remarks(condition, cells).all();
  }

  private List<String> all() {
    forms();
    plateau();
    belowItsEnd();
    chargeVoltages();
    temperatures();
    origins();
    return sentences;
  }

  private void forms() {
    Map<String, TreeSet<String>> forms = by(Remarks::form);
    if (forms.size() > 1) {
      sentences.add(
          "The cells are of different forms ("
              + listed(forms)
              + "): masses are those of the bare cells, and what holds them in a pack weighs more"
              + " for some forms than for others.");
    }
  }

  private static String form(Seen seen) {
    Cell described = seen.cell().record().cell();
    return described == null ? null : described.form();
  }

  private void plateau() {
    double cutoff = condition.cutoffVoltage();
    String names =
        names(
            c -> {
              Double nominal = c.nominalVoltage();
              return nominal != null && cutoff > PLATEAU * nominal;
            });
    if (!names.isEmpty()) {
      sentences.add(
          "A cut-off of "
              + volt(cutoff)
              + " lies on the voltage plateau of "
              + names
              + ", where a small drop decides what is delivered; compare such cells at a lower"
              + " cut-off.");
    }
  }

  private void belowItsEnd() {
    double cutoff = condition.cutoffVoltage() + condition.tolerance().voltage();
    String names =
        names(
            c -> {
              Double end = lowestEnd(c.cell().record());
              return end != null && cutoff < end;
            });
    if (!names.isEmpty()) {
      sentences.add(
          "A cut-off of "
              + volt(condition.cutoffVoltage())
              + " lies below the end of discharge that the sheets allow for "
              + names
              + ": do not discharge these cells so far.");
    }
  }

  private static Double lowestEnd(CellRecord record) {
    return StatedChoice.printed(record, "dischargeCutoffVoltage").stream()
        .map(Statement::value)
        .min(Double::compare)
        .orElse(null);
  }

  /**
   * Of cells that can be charged alike, one whose curves start from a lower voltage shows less of
   * what it has. Iron phosphate and titanate cells are full at voltages of their own.
   */
  private void chargeVoltages() {
    Map<String, TreeSet<String>> voltages =
        by(
            c -> {
              Double nominal = c.nominalVoltage();
              return nominal != null && nominal < PHOSPHATE
                  ? null
                  : stated(c, Conditions.CHARGE_VOLTAGE, "V", condition.tolerance().voltage());
            });
    if (voltages.size() > 1) {
      sentences.add(
          "The curves start from different charge voltages ("
              + listed(voltages)
              + "): what is delivered depends on how full a cell was charged.");
    }
  }

  private void temperatures() {
    String names =
        names(
            c ->
                c.used().stream()
                    .anyMatch(u -> u.conditions().get(Conditions.TEMPERATURE) == null));
    if (!names.isEmpty()) {
      sentences.add(
          "The charts used do not say at which temperature "
              + names
              + " were discharged; it is taken to be the one compared at.");
    }
  }

  private void origins() {
    String names =
        names(c -> c.cell().figure(Measure.DELIVERED_CAPACITY).origin() == Origin.MODELLED);
    if (!names.isEmpty()) {
      sentences.add(
          "What is delivered by "
              + names
              + " comes from printed capacities by a model, not from curves; it is less certain"
              + " than it looks beside the others.");
    }
  }

  /** One condition of the curves used, as a text; null where they do not say it. */
  private static String stated(Seen cell, String name, String unit, double tolerance) {
    TreeSet<Double> values = new TreeSet<>();
    for (Curve curve : cell.used()) {
      Double value = curve.conditions().get(name);
      if (value != null && values.stream().noneMatch(v -> Math.abs(v - value) <= tolerance)) {
        values.add(value);
      }
    }
    return values.isEmpty()
        ? null
        : String.join(
            " and ", values.stream().map(v -> PlainNumber.of(v, DIGITS) + ' ' + unit).toList());
  }

  /**
   * The names of cells by what a function says of them, where it does not say the same of all;
   * those it says nothing of are left out.
   */
  private Map<String, TreeSet<String>> by(Function<Seen, String> kind) {
    List<String> of = cells.parallelStream().map(kind).collect(Collectors.toList());
    Map<String, TreeSet<String>> kinds = new TreeMap<>();
    if (of.stream().filter(Objects::nonNull).distinct().count() < 2) {
      return kinds;
    }
    for (int i = 0; i < cells.size(); i++) {
      if (of.get(i) != null) {
        kinds.computeIfAbsent(of.get(i), k -> new TreeSet<>()).add(cells.get(i).name());
      }
    }
    return kinds;
  }

  private String names(Predicate<Seen> which) {
    TreeSet<String> names =
        cells.parallelStream()
            .filter(which)
            .map(Seen::name)
            .collect(Collectors.toCollection(TreeSet::new));
    return listed(names);
  }

  private static String listed(Map<String, TreeSet<String>> kinds) {
    return String.join(
        "; ",
        kinds.entrySet().stream().map(e -> e.getKey() + ": " + listed(e.getValue())).toList());
  }

  private static String listed(TreeSet<String> names) {
    List<String> all = List.copyOf(names);
    if (all.size() > MOST_NAMES) {
      return String.join(", ", all.subList(0, MOST_NAMES))
          + " and "
          + (all.size() - MOST_NAMES)
          + " more";
    }
    return all.size() < 2
        ? String.join("", all)
        : String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.get(all.size() - 1);
  }

  private static String volt(double voltage) {
    return PlainNumber.of(voltage, DIGITS) + " V";
  }
}
