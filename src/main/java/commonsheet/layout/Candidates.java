package commonsheet.layout;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.quantity.QuantityKind;
import commonsheet.record.Conditions;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Makes a candidate of a figure: canonical unit, conditions, evidence, and the doubts that the
 * place itself gives.
 */
final class Candidates {
  /** A label understood to less than this share of its letters may mean something else. */
  private static final double LABEL_UNDERSTOOD = 0.5;

  private final QuantityCatalogue quantities;
  private final ConditionsOf conditionsOf;
  private final Terms terms;
  private final Naming naming;

  Candidates(QuantityCatalogue quantities, Terms terms, Naming naming) {
    this.quantities = quantities;
    this.terms = terms;
    this.naming = naming;
    this.conditionsOf = new ConditionsOf(terms);
  }

  /** What a figure of a passage says of a quantity. */
  Candidate of(
      Entry entry,
      String rule,
      Passage piece,
      String quantity,
      Statistic statistic,
      Figure figure,
      List<Told> told) {
    QuantityKind kind = quantities.get(quantity);
    List<String> doubts = doubts(entry, kind, figure, told);
    doubts.addAll(LostConditions.doubts(entry, piece, figure));
    boolean isRate = figure.unit() != null && figure.unit().dimension() == Dimension.RATE;
    Double rate = isRate ? figure.value() : null;
    Figure canonical = canonical(kind, figure);
    Conditions conditions = conditionsOf.read(quantity, told);
    if (rate != null) {
      String name = isDischarge(quantity) ? Conditions.DISCHARGE_RATE : Conditions.CHARGE_RATE;
      conditions = terms.mayCarry(quantity, name) ? conditions.with(name, rate) : conditions;
    }
    return new Candidate(
        quantity,
        statistic,
        isRate
            ? Candidate.Amount.UNKNOWN
            : new Candidate.Amount(canonical.value(), canonical.low(), canonical.high()),
        rate,
        conditions,
        new Candidate.Place(
            piece.page(),
            piece.box(figure.start(), figure.end()),
            evidenceText(entry, piece),
            entry.method(),
            rule + "/" + quantity,
            piece.recognisedConfidence(figure.start(), figure.end())),
        false,
        null,
        null,
        doubts);
  }

  private static boolean isDischarge(String quantity) {
    return quantity.toLowerCase(Locale.ROOT).contains("discharge");
  }

  private static Figure canonical(QuantityKind kind, Figure figure) {
    if (figure.unit() == null
        || kind.dimension() == Dimension.CYCLES
        || figure.unit().dimension() == Dimension.RATE) {
      return figure;
    }
    return isChargeForCurrent(kind, figure) ? figure.in("A.h") : figure.in(kind.unit());
  }

  private static boolean isChargeForCurrent(QuantityKind kind, Figure figure) {
    return kind.dimension() == Dimension.CURRENT && figure.unit().dimension() == Dimension.CHARGE;
  }

  private List<String> doubts(Entry entry, QuantityKind kind, Figure figure, List<Told> told) {
    List<String> doubts = new ArrayList<>();
    if (figure.unit() == null) {
      doubts.add("no unit is printed; " + kind.unit() + " is taken");
    } else if (isChargeForCurrent(kind, figure)) {
      doubts.add("printed with a unit of charge (" + figure.text() + "); a current is meant");
    }
    if (figure.ambiguous()) {
      doubts.add("the figure can be read in two ways: " + figure.text());
    }
    if (kind.dimension() == Dimension.CURRENT) {
      told.stream()
          .map(Told::figure)
          .filter(f -> f.ambiguous() && f.unit().dimension() == Dimension.TEMPERATURE)
          .forEach(f -> doubts.add("a rate or a temperature stands beside it: " + f.text()));
    }
    if (naming.understood(entry) < LABEL_UNDERSTOOD) {
      doubts.add("the label is only partly understood: " + entry.label());
    }
    if (conditionsOf.severalTemperatures(kind.name(), told)) {
      doubts.add("several temperatures stand beside it: " + entry.label());
    }
    return doubts;
  }

  private static String evidenceText(Entry entry, Passage piece) {
    String label = entry.label().replace(" / ", " ");
    return (label + " " + piece.shown()).trim();
  }
}
