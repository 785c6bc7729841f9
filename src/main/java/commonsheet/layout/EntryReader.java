package commonsheet.layout;

import commonsheet.layout.Sentences.Direction;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.quantity.QuantityKind;
import commonsheet.record.Conditions;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Takes one entry of a sheet for what it says: names the quantity by the concepts of its labels, picks the figures that
 * can be its value, and gives the rest as conditions.
 */
final class EntryReader {
  /** A label understood to less than this share of its letters may mean something else. */
  private static final double LABEL_UNDERSTOOD = 0.5;

  private static final Pattern IN_BRACKETS = Pattern.compile("[(\\uFF08\\[][^)\\uFF09\\]]*[)\\uFF09\\]]");
  private static final Set<String> DIRECTIONS = Set.of("charge", "discharge");
  private static final Set<String> STATES = Set.of("charge", "discharge", "storage", "operating");

  private final Vocabulary vocabulary;
  private final Terms terms;
  private final QuantityCatalogue quantities;
  private final FigureParser parser;
  private final Segments segments;
  private final Sentences sentences;
  private final Statistics statistics;
  private final ConditionsOf conditionsOf;

  EntryReader(Vocabulary vocabulary, Terms terms, QuantityCatalogue quantities, FigureParser parser) {
    this.vocabulary = vocabulary;
    this.terms = terms;
    this.quantities = quantities;
    this.parser = parser;
    this.segments = new Segments(parser, vocabulary);
    this.sentences = new Sentences(vocabulary, parser);
    this.statistics = new Statistics(terms);
    this.conditionsOf = new ConditionsOf(terms);
  }

  /** What the entry may say; the outcome of each of its pieces goes to {@code outcomes}. */
  List<Candidate> read(Entry entry, List<Outcome> outcomes) {
    Set<String> outer = new LinkedHashSet<>();
    for (Passage label : entry.labels()) {
      outer.addAll(vocabulary.conceptsOf(label.text()));
    }
    if (blocked(entry)) {
      outcomes.add(outcome(entry, "no rating of the cell: a test, a protection circuit or the like", false));
      return List.of();
    }
    List<Candidate> found = new ArrayList<>();
    for (Entry.Value value : entry.values()) {
      found.addAll(readValue(entry, value, outer));
    }
    if (found.isEmpty() && outer.contains("cyclelife")) {
      found.addAll(cyclesFromText(entry));
    }
    outcomes.add(
        found.isEmpty()
            ? outcome(entry, reasonForNothing(outer), false)
            : outcome(
                entry,
                String.join("; ", found.stream().map(c -> c.quantity() + " by " + c.rule()).distinct().toList()),
                true));
    return found;
  }

  private static Outcome outcome(Entry entry, String result, boolean matched) {
    StringBuilder values = new StringBuilder();
    entry.values().forEach(v -> values.append(values.isEmpty() ? "" : " | ").append(v.text().shown()));
    return new Outcome(entry.page(), entry.label(), values.toString(), result, matched);
  }

  private String reasonForNothing(Set<String> outer) {
    if (outer.isEmpty()) {
      return "unmatched: no word of the label is in the vocabulary";
    }
    List<Term> fitting = terms.fitting(outer);
    return fitting.isEmpty()
        ? "unmatched: the label's words (" + String.join(", ", outer) + ") name no quantity"
        : "unmatched: named " + fitting.get(0).quantity() + ", but no figure beside it has its unit";
  }

  private boolean blocked(Entry entry) {
    Set<String> section = vocabulary.conceptsOf(withoutBrackets(entry.section()));
    if (terms.blocked(section) && terms.fitting(section).isEmpty()) {
      return true;
    }
    return entry.labels().stream().anyMatch(label -> terms.blocked(vocabulary.conceptsOf(withoutBrackets(label.text()))));
  }

  private static String withoutBrackets(String text) {
    String without = IN_BRACKETS.matcher(text).replaceAll(" ");
    return without.isBlank() ? text : without;
  }

  private List<Candidate> readValue(Entry entry, Entry.Value value, Set<String> outer) {
    List<Candidate> found = new ArrayList<>();
    List<Passage> pieces = segments.of(value.text());
    List<Passage> beside = Beside.each(pieces, value.conditions());
    for (int i = 0; i < pieces.size(); i++) {
      Entry.Value own =
          new Entry.Value(value.role(), value.heading(), value.text(), value.unit(), beside.get(i));
      found.addAll(readPiece(entry, own, pieces.get(i), outer));
    }
    if (value.role() == Role.MODEL) {
      String model = value.heading().shown();
      found.replaceAll(c -> c.ofModel(model));
    }
    if (found.isEmpty()) {
      terms.procedure(outer).ifPresent(p -> found.addAll(readProcedure(entry, value, p)));
    }
    return found;
  }

  // ---- one piece: label words, figures, the rest ----

  private List<Candidate> readPiece(
      Entry entry, Entry.Value value, Passage piece, Set<String> outer) {
    List<Figure> figures = withUnits(parser.find(piece.text()), value.unit());
    if (figures.isEmpty()) {
      return List.of();
    }
    for (Term term : termsFor(piece, figures, outer)) {
      QuantityKind kind = quantities.get(term.quantity());
      List<Figure> values = valuesOf(kind, figures, piece.text());
      if (!values.isEmpty()) {
        return candidates(entry, value, piece, term, kind, values);
      }
    }
    return List.of();
  }

  private List<Term> termsFor(Passage piece, List<Figure> figures, Set<String> outer) {
    List<Term> all = new ArrayList<>();
    for (Figure figure : figures) {
      Set<String> inner = vocabulary.conceptsOf(labelBefore(piece.text(), figure));
      if (terms.blocked(inner)) {
        continue;
      }
      for (Term term : terms.fitting(merge(outer, inner))) {
        if (!all.contains(term) && fits(quantities.get(term.quantity()), figure)) {
          all.add(term);
        }
      }
    }
    return all;
  }

  /** The words of a piece that introduce a figure: those before it that stand in no bracket and after no "@". */
  private static String labelBefore(String text, Figure figure) {
    String before = withoutBrackets(text.substring(0, figure.start()) + " ");
    int at = before.indexOf('@');
    return at >= 0 ? before.substring(0, at) : before;
  }

  /** The inner words say more exactly what the outer ones announce: "Operating temperature" / "Charge". */
  private static Set<String> merge(Set<String> outer, Set<String> inner) {
    Set<String> merged = new LinkedHashSet<>(outer);
    if (inner.stream().anyMatch(STATES::contains)) {
      if (inner.contains("storage")) {
        merged.removeAll(DIRECTIONS);
      } else if (inner.stream().anyMatch(DIRECTIONS::contains)) {
        merged.removeAll(DIRECTIONS);
        merged.remove("storage");
      }
    }
    if (inner.contains("pulse")) {
      merged.remove("continuous");
    }
    if (inner.contains("continuous")) {
      merged.remove("pulse");
    }
    if (inner.contains("ac")) {
      merged.remove("dc");
    }
    if (inner.contains("dc")) {
      merged.remove("ac");
    }
    merged.addAll(inner);
    return merged;
  }

  private List<Figure> withUnits(List<Figure> figures, String unitText) {
    if (unitText == null || unitText.isBlank()) {
      return figures;
    }
    List<Figure> unit = parser.find("1 " + unitText);
    if (unit.isEmpty() || unit.get(0).unit() == null) {
      return figures;
    }
    return figures.stream()
        .map(
            f ->
                f.unit() != null
                    ? f
                    : new Figure(
                        f.start(),
                        f.end(),
                        f.text(),
                        f.value(),
                        f.low(),
                        f.high(),
                        f.bound(),
                        f.qualifier(),
                        f.approximate(),
                        unit.get(0).unit(),
                        f.ambiguous()))
        .toList();
  }

  private static boolean fits(QuantityKind kind, Figure figure) {
    if (figure.unit() == null) {
      return unitLeavesNoDoubt(kind, figure);
    }
    Dimension dimension = figure.unit().dimension();
    if (kind.range()) {
      return dimension == Dimension.TEMPERATURE && (figure.low() != null || figure.high() != null);
    }
    if (kind.dimension() == Dimension.CURRENT) {
      // mAh printed where mA is meant is a common slip; it is read, with a doubt.
      return dimension == Dimension.CURRENT || dimension == Dimension.RATE || dimension == Dimension.CHARGE;
    }
    return dimension == kind.dimension();
  }

  /** A bare number takes the unit of its quantity only where nothing else is ever printed. */
  private static boolean unitLeavesNoDoubt(QuantityKind kind, Figure figure) {
    return switch (kind.dimension()) {
      case CYCLES -> figure.value() != null && figure.value() >= 50 && !figure.text().contains(".");
      case LENGTH -> figure.value() != null && figure.value() >= 0.3 && figure.value() <= 400;
      case TEMPERATURE -> figure.isRange();
      case VOLTAGE -> figure.value() != null && figure.value() >= 1.4 && figure.value() <= 4.6;
      default -> false;
    };
  }

  /** The figures of a piece that are values of the quantity; the others are conditions. */
  private List<Figure> valuesOf(QuantityKind kind, List<Figure> figures, String text) {
    List<Figure> fitting = figures.stream().filter(f -> fits(kind, f)).toList();
    if (kind.dimension() == Dimension.CURRENT) {
      fitting = preferAmperes(fitting);
    }
    List<Figure> printed = fitting.stream().filter(f -> f.unit() != null).toList();
    if (!printed.isEmpty()) {
      fitting = printed;
    }
    if (fitting.size() < 2) {
      return fitting;
    }
    List<Figure> values = new ArrayList<>();
    for (Figure figure : fitting) {
      if (values.isEmpty() || figure.qualifier() != null || !isCondition(text, values.get(values.size() - 1), figure)) {
        values.add(figure);
      }
    }
    return values;
  }

  private static List<Figure> preferAmperes(List<Figure> fitting) {
    List<Figure> amperes =
        fitting.stream().filter(f -> f.unit() != null && f.unit().dimension() == Dimension.CURRENT).toList();
    return amperes.isEmpty() ? fitting : amperes;
  }

  /** Whether a further figure of the same kind stands in a bracket or after a word that opens a condition. */
  private static boolean isCondition(String text, Figure before, Figure figure) {
    String between = text.substring(before.end(), figure.start());
    return between.contains("(")
        || between.contains("\uFF08")
        || between.contains("@")
        || Tokens.of(between).size() > 1;
  }

  // ---- candidates ----

  private List<Candidate> candidates(
      Entry entry,
      Entry.Value value,
      Passage piece,
      Term term,
      QuantityKind kind,
      List<Figure> figures) {
    List<Candidate> found = new ArrayList<>();
    List<Told> told = told(entry, value, piece, kind.name(), figures);
    boolean several = figures.size() > 1;
    for (Figure figure : figures) {
      Statistic statistic = statistics.of(kind.name(), figure, value.role(), fromInside(entry, piece, figure));
      Candidate candidate = candidate(entry, piece, term.quantity(), kind, statistic, figure, told);
      if (several && figure.qualifier() == null && differs(figures)) {
        candidate = candidate.doubted("several values stand here: " + piece.shown());
      }
      if (term.weak()) {
        candidate = candidate.doubted("the label does not say which current this is: " + entry.label());
      }
      found.add(candidate);
    }
    return found;
  }

  private static boolean differs(List<Figure> figures) {
    return figures.stream().map(f -> f.bound() + " " + f.qualifier()).distinct().count() < figures.size();
  }

  private List<Set<String>> fromInside(Entry entry, Passage piece, Figure figure) {
    List<Set<String>> sets = new ArrayList<>();
    sets.add(vocabulary.conceptsOf(labelBefore(piece.text(), figure)));
    for (int i = entry.labels().size() - 1; i >= 0; i--) {
      sets.add(vocabulary.conceptsOf(entry.labels().get(i).text()));
    }
    return sets;
  }

  private List<Told> told(Entry entry, Entry.Value value, Passage piece, String quantity, List<Figure> own) {
    Direction direction = direction(quantity);
    List<Told> told = new ArrayList<>();
    told.addAll(sentences.read(value.heading().text(), direction));
    for (Told t : sentences.read(piece.text(), direction)) {
      if (own.stream().noneMatch(f -> f.start() == t.figure().start())) {
        told.add(t);
      }
    }
    for (int i = entry.labels().size() - 1; i >= 0; i--) {
      told.addAll(sentences.read(entry.labels().get(i).text(), direction));
    }
    told.addAll(sentences.read(value.conditions().text(), direction));
    told.addAll(sentences.read(entry.conditions().text(), direction));
    told.addAll(sentences.read(entry.context().text(), Direction.UNKNOWN));
    return told;
  }

  private static Direction direction(String quantity) {
    return switch (quantity) {
      case "standardChargeCurrent", "maximumChargeCurrent", "chargeVoltage", "chargeCutoffCurrent", "chargeTemperature" ->
          Direction.CHARGE;
      case "internalResistanceAC", "mass", "storageTemperature" -> Direction.UNKNOWN;
      default -> Direction.DISCHARGE;
    };
  }

  private Candidate candidate(
      Entry entry, Passage piece, String quantity, QuantityKind kind, Statistic statistic, Figure figure, List<Told> told) {
    List<String> doubts = new ArrayList<>();
    Double rate = null;
    Figure canonical;
    if (figure.unit() == null) {
      canonical = figure;
      doubts.add("no unit is printed; " + kind.unit() + " is taken");
    } else if (figure.unit().dimension() == Dimension.RATE) {
      canonical = figure;
      rate = figure.value();
    } else if (kind.dimension() == Dimension.CURRENT && figure.unit().dimension() == Dimension.CHARGE) {
      canonical = figure.in("A.h");
      doubts.add("printed with a unit of charge (" + figure.text() + "); a current is meant");
    } else {
      canonical = kind.dimension() == Dimension.CYCLES ? figure : figure.in(kind.unit());
    }
    if (figure.ambiguous()) {
      doubts.add("the figure can be read in two ways: " + figure.text());
    }
    if (understood(entry) < LABEL_UNDERSTOOD) {
      doubts.add("the label is only partly understood: " + entry.label());
    }
    Conditions conditions = conditionsOf.read(quantity, told);
    if (rate != null && quantity.toLowerCase(java.util.Locale.ROOT).contains("discharge")) {
      conditions = ifAllowed(quantity, conditions, Conditions.DISCHARGE_RATE, rate);
    } else if (rate != null) {
      conditions = ifAllowed(quantity, conditions, Conditions.CHARGE_RATE, rate);
    }
    boolean isRate = rate != null;
    return new Candidate(
        quantity,
        statistic,
        isRate ? null : canonical.value(),
        isRate ? null : canonical.low(),
        isRate ? null : canonical.high(),
        rate,
        conditions,
        entry.page(),
        piece.box(figure.start(), figure.end()),
        evidenceText(entry, piece),
        entry.method(),
        entry.layoutRule() + "/" + quantity,
        piece.recognisedConfidence(figure.start(), figure.end()),
        false,
        null,
        doubts);
  }

  private Conditions ifAllowed(String quantity, Conditions conditions, String name, double value) {
    return terms.mayCarry(quantity, name) ? conditions.with(name, value) : conditions;
  }

  private double understood(Entry entry) {
    String label = entry.label();
    return label.isBlank() ? 1 : vocabulary.coverage(label, vocabulary.hits(label));
  }

  private static String evidenceText(Entry entry, Passage piece) {
    String label = entry.label().replace(" / ", " ");
    return (label + " " + piece.shown()).trim();
  }

  // ---- procedures and cycle life ----

  private List<Candidate> readProcedure(Entry entry, Entry.Value value, Procedure procedure) {
    boolean charging = procedure.all().contains("charge");
    Direction direction = charging ? Direction.CHARGE : Direction.DISCHARGE;
    Passage text = value.text();
    List<Told> told = sentences.read(text.text(), direction);
    List<Candidate> found = new ArrayList<>();
    List<Figure> currents = new ArrayList<>();
    for (Told t : told) {
      switch (t.part()) {
        case CHARGE_CURRENT, DISCHARGE_CURRENT, BOTH_CURRENTS -> {
          if ((t.part() == Told.Part.CHARGE_CURRENT) == charging) {
            currents.add(t.figure());
          }
        }
        case TAPER_CURRENT -> addTold(found, entry, text, procedure.taper(), t, told, false);
        case CHARGE_VOLTAGE -> addTold(found, entry, text, charging ? procedure.voltage() : null, t, told, true);
        case CUTOFF_VOLTAGE -> addTold(found, entry, text, charging ? null : procedure.voltage(), t, told, true);
        default -> {}
      }
    }
    if (procedure.current() != null && !currents.isEmpty()) {
      addCurrent(found, entry, value, procedure.current(), preferAmperes(currents).get(0), told);
    }
    return found;
  }

  private void addCurrent(
      List<Candidate> found, Entry entry, Entry.Value value, String quantity, Figure current, List<Told> told) {
    Direction direction = direction(quantity);
    List<Told> all = new ArrayList<>(told);
    List<Told> beside = sentences.read(value.conditions().text(), direction);
    all.addAll(beside);
    Figure figure = current;
    Passage passage = value.text();
    if (current.unit().dimension() == Dimension.RATE) {
      Optional<Figure> amperes =
          beside.stream()
              .filter(t -> t.part() != Told.Part.TAPER_CURRENT)
              .map(Told::figure)
              .filter(f -> f.unit().dimension() == Dimension.CURRENT)
              .findFirst();
      if (amperes.isPresent()) {
        figure = amperes.get();
        passage = value.conditions();
      }
    }
    Statistic statistic = statistics.of(quantity, figure, value.role(), fromInside(entry, Passage.EMPTY, zero()));
    Candidate candidate = candidate(entry, passage, quantity, quantities.get(quantity), statistic, figure, all);
    found.add(candidate);
  }

  private static Figure zero() {
    return new Figure(0, 0, "", null, null, null, commonsheet.quantity.Bound.NONE, null, false, null, false);
  }

  private void addTold(
      List<Candidate> found, Entry entry, Passage text, String quantity, Told told, List<Told> all, boolean mentioned) {
    if (quantity == null) {
      return;
    }
    QuantityKind kind = quantities.get(quantity);
    List<Told> others = all.stream().filter(t -> t != told).toList();
    Candidate c = candidate(entry, text, quantity, kind, null, told.figure(), others);
    found.add(mentioned ? c.asMention() : c);
  }

  /** "The capacity at the 300th cycle is at least 80 %": the count stands in the sentence, the share beside it. */
  private List<Candidate> cyclesFromText(Entry entry) {
    List<Passage> texts = new ArrayList<>(entry.values().stream().map(Entry.Value::text).toList());
    texts.add(entry.conditions());
    entry.values().forEach(v -> texts.add(v.conditions()));
    List<Told> told = new ArrayList<>();
    texts.forEach(t -> told.addAll(sentences.read(t.text(), Direction.DISCHARGE)));
    entry.labels().forEach(l -> told.addAll(sentences.read(l.text(), Direction.DISCHARGE)));
    for (Passage text : texts) {
      for (Figure figure : parser.find(text.text())) {
        if (figure.unit() != null
            && figure.unit().dimension() == Dimension.CYCLES
            && figure.value() != null
            && figure.value() >= 50) {
          QuantityKind kind = quantities.get("cycleLife");
          Statistic statistic = statistics.of("cycleLife", figure, Role.VALUE, List.of());
          return List.of(candidate(entry, text, "cycleLife", kind, statistic, figure, told));
        }
      }
    }
    return List.of();
  }

  /** End voltages and end currents that a sentence about something else mentions. */
  List<Candidate> mentions(Entry entry) {
    if (blocked(entry)) {
      return List.of();
    }
    List<Candidate> found = new ArrayList<>();
    List<Passage> texts = new ArrayList<>();
    entry.values().forEach(v -> texts.add(v.text()));
    entry.values().forEach(v -> texts.add(v.conditions()));
    texts.add(entry.conditions());
    texts.add(entry.context());
    for (Passage text : texts) {
      List<Told> told = sentences.read(text.text(), Direction.UNKNOWN);
      for (Told t : told) {
        String quantity =
            switch (t.part()) {
              case CUTOFF_VOLTAGE -> "dischargeCutoffVoltage";
              case CHARGE_VOLTAGE -> "chargeVoltage";
              case TAPER_CURRENT -> "chargeCutoffCurrent";
              default -> null;
            };
        addTold(found, entry, text, quantity, t, told, true);
      }
    }
    return found;
  }
}
