package commonsheet.layout;

import commonsheet.layout.Sentences.Direction;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.quantity.QuantityKind;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Takes one entry of a sheet for what it says: names the quantity by the concepts of its labels,
 * picks the figures that can be its value, and gives the rest as conditions.
 */
final class EntryReader {
  /** A figure within the first words of a passage is what the passage is about. */
  private static final int FIRST_WORDS = 8;

  private final Vocabulary vocabulary;
  private final Terms terms;
  private final QuantityCatalogue quantities;
  private final Figures parser;
  private final LabelUnits units;
  private final Segments segments;
  private final Sentences sentences;
  private final Statistics statistics;
  private final Naming naming;
  private final Candidates candidates;
  private final Procedures procedures;
  private final CycleLife cycleLife;
  private final DimensionSeries dimensionSeries;
  private final StorageShare storageShare;
  private final TemperatureLimits temperatureLimits;
  private final TemperatureColumns temperatureColumns;

  EntryReader(Vocabulary vocabulary, Terms terms, QuantityCatalogue quantities, Figures parser) {
    this.vocabulary = vocabulary;
    this.terms = terms;
    this.quantities = quantities;
    this.parser = parser;
    this.units = new LabelUnits(parser);
    this.segments = new Segments(parser, vocabulary);
    this.sentences = new Sentences(vocabulary, parser);
    this.statistics = new Statistics(terms);
    this.naming = new Naming(vocabulary, terms, quantities);
    this.candidates = new Candidates(quantities, terms, naming);
    this.procedures = new Procedures(sentences, statistics, naming, candidates);
    this.cycleLife = new CycleLife(parser, sentences, candidates);
    this.temperatureColumns =
        new TemperatureColumns(parser, sentences, terms, quantities, candidates);
    this.temperatureLimits = new TemperatureLimits(parser, sentences, candidates);
    this.dimensionSeries = new DimensionSeries(vocabulary);
    this.storageShare = new StorageShare(vocabulary, parser, candidates);
  }

  /** What the entry may say; the outcome goes to {@code outcomes}. */
  List<Candidate> read(Entry entry, List<Outcome> outcomes) {
    if (naming.blocked(entry)) {
      outcomes.add(
          outcome(entry, "no rating of the cell: a test, a protection circuit or the like", false));
      return List.of();
    }
    Set<String> outer = naming.outer(entry);
    List<Candidate> found = new ArrayList<>();
    found.addAll(temperatureColumns.read(entry, outer));
    if (found.isEmpty()) {
      for (Entry.Value value : entry.values()) {
        found.addAll(readValue(entry, value, outer));
      }
    }
    if (outer.contains("cyclelife")) {
      // Currents, voltages and shares of the capacity in a row about cycle life are those of its
      // test.
      found.removeIf(c -> !c.quantity().equals("cycleLife"));
      if (found.isEmpty()) {
        found.addAll(cycleLife.read(entry));
      }
    }
    outcomes.add(
        found.isEmpty()
            ? outcome(entry, reasonForNothing(outer), false)
            : outcome(
                entry,
                String.join("; ", found.stream().map(Candidate::rule).distinct().toList()),
                true));
    return found;
  }

  /** What a sentence about something else mentions in passing. */
  List<Candidate> mentions(Entry entry) {
    return naming.blocked(entry) ? List.of() : procedures.mentions(entry);
  }

  private static Outcome outcome(Entry entry, String result, boolean matched) {
    String values = String.join(" | ", entry.values().stream().map(v -> v.text().shown()).toList());
    return new Outcome(entry.page(), entry.label(), values, result, matched);
  }

  private String reasonForNothing(Set<String> outer) {
    if (outer.isEmpty()) {
      return "unmatched: no word of the label is in the vocabulary";
    }
    List<Term> fitting = terms.fitting(outer);
    return fitting.isEmpty()
        ? "unmatched: the label's words (" + String.join(", ", outer) + ") name no quantity"
        : "unmatched: named "
            + fitting.get(0).quantity()
            + ", but no figure beside it has its unit";
  }

  private List<Candidate> readValue(Entry entry, Entry.Value value, Set<String> outer) {
    List<Candidate> found = new ArrayList<>();
    List<Passage> pieces = segments.of(value.text());
    List<Passage> beside = Beside.each(pieces, value.conditions());
    boolean wholeProcedure = terms.procedure(outer).isPresent();
    for (int i = 0; i < pieces.size(); i++) {
      Passage conditions = beside.get(i).then(unnamedAfter(entry, value, pieces, i, outer));
      Entry.Value own =
          new Entry.Value(value.role(), value.heading(), pieces.get(i), value.unit(), conditions);
      List<Candidate> named = readPiece(entry, own, outer);
      if (named.isEmpty() && !wholeProcedure) {
        named = readProcedureInPiece(entry, own, outer);
      }
      found.addAll(named);
    }
    if (found.isEmpty() && wholeProcedure) {
      found.addAll(procedures.read(entry, value, terms.procedure(outer).orElseThrow()));
    }
    if (value.role() == Role.MODEL) {
      String model = value.heading().shown();
      found.replaceAll(c -> c.ofModel(model));
    }
    return found;
  }

  /**
   * The pieces behind one that name no value of their own state its conditions: "2600 mAh /
   * Discharge: 0.2 C, 2.5 V".
   */
  private Passage unnamedAfter(
      Entry entry, Entry.Value value, List<Passage> pieces, int index, Set<String> outer) {
    Passage conditions = Passage.EMPTY;
    for (int i = index + 1; i < pieces.size(); i++) {
      Passage piece = pieces.get(i);
      List<Figure> figures = units.figures(piece.text(), value.unit());
      boolean names =
          !naming.named(entry, piece, figures, outer, Passage.EMPTY).isEmpty()
              || (!figures.isEmpty()
                  && terms
                      .procedure(Naming.merge(outer, naming.inner(piece, figures, 0)))
                      .isPresent());
      if (names && !conditions.isBlank()) {
        break;
      }
      conditions = names || naming.isLabelled(piece) ? conditions : conditions.then(piece);
    }
    return conditions;
  }

  private List<Candidate> readProcedureInPiece(Entry entry, Entry.Value own, Set<String> outer) {
    List<Figure> figures = parser.find(own.text().text());
    if (figures.isEmpty() || Naming.isSentence(own.text().text())) {
      return List.of();
    }
    Optional<Procedure> procedure =
        terms.procedure(Naming.merge(outer, naming.inner(own.text(), figures, 0)));
    return procedure.map(p -> procedures.read(entry, own, p)).orElse(List.of());
  }

  private List<Candidate> readPiece(Entry entry, Entry.Value own, Set<String> outer) {
    Passage piece = own.text();
    List<Figure> figures = figures(entry, own, outer);
    List<Candidate> found = new ArrayList<>();
    Set<Figure> used = new HashSet<>();
    List<DimensionSeries.Named> series = dimensionSeries.read(entry.labels(), piece, figures);
    if (!series.isEmpty()) {
      return dimensions(entry, own, figures, series);
    }
    Map<Term, List<Figure>> named =
        naming.named(entry, piece, figures, withColumn(outer, own.role()), own.conditions());
    for (Map.Entry<Term, List<Figure>> entryOfTerm : named.entrySet()) {
      Term term = entryOfTerm.getKey();
      QuantityKind kind = quantities.get(term.quantity());
      if (bareWhereItMayNot(entry, kind, entryOfTerm.getValue())) {
        continue;
      }
      List<Figure> open = entryOfTerm.getValue().stream().filter(f -> !used.contains(f)).toList();
      if (open.isEmpty()) {
        continue;
      }
      List<Figure> values = Fit.values(kind, open, piece.text());
      used.addAll(open);
      found.addAll(candidates(entry, own, figures, term, kind, values));
      found.addAll(storageShare.read(entry, own, found));
      found.addAll(temperatureLimits.read(entry, kind.name(), own.conditions()));
    }
    return found;
  }

  /**
   * The figures of a piece, with the unit of column or label where they have none, multiples of C
   * as such.
   */
  private List<Figure> figures(Entry entry, Entry.Value own, Set<String> outer) {
    List<Figure> figures = units.figures(own.text().text(), own.unit());
    for (Passage label : entry.labels()) {
      figures = units.withUnit(figures, units.inBrackets(label.text()));
    }
    figures = LabelUnits.sharedBySlash(own.text().text(), figures);
    return outer.contains("current") ? figures.stream().map(Sentences::asRate).toList() : figures;
  }

  /**
   * A column headed "Max." makes "Charge current" a maximum, unless the label says which current it
   * is.
   */
  private static Set<String> withColumn(Set<String> outer, Role role) {
    Statistic statistic = Statistics.column(role);
    if (statistic == null
        || outer.contains("standard")
        || outer.contains("fast")
        || !outer.contains("current")) {
      return outer;
    }
    return Naming.merge(outer, Set.of(statistic.label()));
  }

  private List<Candidate> dimensions(
      Entry entry, Entry.Value own, List<Figure> figures, List<DimensionSeries.Named> series) {
    List<Candidate> found = new ArrayList<>();
    for (DimensionSeries.Named named : series) {
      Statistic statistic =
          statistics.of(
              named.quantity(),
              named.figure(),
              own.role(),
              naming.fromInside(entry, own.text(), figures, figures.indexOf(named.figure())));
      found.add(
          candidates.of(
              entry,
              entry.layoutRule(),
              own.text(),
              named.quantity(),
              statistic,
              named.figure(),
              List.of()));
    }
    return found;
  }

  /** Numbers without units scattered in text (the ticks of a chart) are no values. */
  private static boolean bareWhereItMayNot(Entry entry, QuantityKind kind, List<Figure> figures) {
    boolean bare = figures.stream().allMatch(f -> f.unit() == null);
    return bare
        && entry.layoutRule().equals("paragraph")
        && kind.dimension() != Dimension.TEMPERATURE;
  }

  private List<Candidate> candidates(
      Entry entry,
      Entry.Value own,
      List<Figure> figures,
      Term term,
      QuantityKind kind,
      List<Figure> values) {
    List<Candidate> found = new ArrayList<>();
    List<Told> told = told(entry, own, kind.name(), values);
    List<Statistic> inOrder = statistics.listedIn(entry.labels(), vocabulary);
    for (Figure figure : values) {
      Statistic statistic =
          statistics.of(
              kind.name(),
              figure,
              own.role(),
              naming.fromInside(entry, own, figures, figures.indexOf(figure)));
      boolean inPassing = isInPassing(entry, own.text(), figure, kind);
      boolean promised =
          (own.role() == Role.STATED && asksForAtLeast(entry))
              || (kind.dimension() == Dimension.RATIO
                  && sentences.saidBefore(own.text().text(), figure, "atleast"));
      if (statistic == null && promised) {
        statistic = Statistic.MINIMUM;
      }
      Candidate candidate =
          candidates.of(
              entry, entry.layoutRule(), own.text(), term.quantity(), statistic, figure, told);
      if (naming.isAbout(entry, "pack") && !naming.isAbout(entry, "cell")) {
        candidate = candidate.doubted("the label speaks of a pack: " + entry.label());
      }
      if (statistics.isListed(values, inOrder)) {
        candidate = candidate.called(inOrder.get(values.indexOf(figure)));
      } else if (values.size() > 1 && figure.qualifier() == null && sameKind(values)) {
        candidate = candidate.doubted("several values stand here: " + own.text().shown());
      }
      if (own.role() == Role.UNKNOWN) {
        candidate =
            candidate.doubted(
                "the row has values in several columns, and nothing says whose each is");
      }
      if (kind.dimension() == Dimension.LENGTH
          && naming.namesSeveralDimensions(entry, own.text())) {
        candidate = candidate.doubted("the label names several dimensions: " + entry.label());
      }
      if (term.weak()) {
        candidate =
            candidate.doubted("the label leaves room for another quantity: " + entry.label());
      }
      found.add(inPassing ? candidate.asMention() : candidate);
    }
    return found;
  }

  /**
   * A current, voltage or capacity in the middle of a sentence is mentioned; a row or a clause
   * about it comes first.
   */
  private static boolean isInPassing(Entry entry, Passage piece, Figure figure, QuantityKind kind) {
    boolean share =
        kind.dimension() == Dimension.RATIO || kind.dimension() == Dimension.CYCLES || kind.range();
    boolean sentence =
        entry.layoutRule().equals("paragraph")
            || (Naming.isSentence(piece.text())
                && Tokens.of(piece.text().substring(0, figure.start())).size() > FIRST_WORDS);
    return sentence && !share;
  }

  /**
   * "Each cell shall meet or exceed the requirements of the table": its bare figures are minima.
   */
  private boolean asksForAtLeast(Entry entry) {
    return vocabulary.conceptsOf(entry.context().text()).contains("atleast");
  }

  private static boolean sameKind(List<Figure> figures) {
    return figures.stream().map(f -> f.bound() + " " + f.qualifier()).distinct().count()
        < figures.size();
  }

  /**
   * A temperature that stands with the value itself leaves no room for those of the procedure
   * beside it; a cycle life has one test, so that two temperatures make it doubtful.
   */
  private static void addBeside(List<Told> told, List<Told> more, String quantity) {
    boolean warm =
        !quantity.equals("cycleLife")
            && told.stream().anyMatch(t -> t.figure().unit().dimension() == Dimension.TEMPERATURE);
    for (Told t : more) {
      if (!warm || t.figure().unit().dimension() != Dimension.TEMPERATURE) {
        told.add(t);
      }
    }
  }

  private static boolean isTime(Told told) {
    return told.figure().unit().dimension() == Dimension.TIME;
  }

  private List<Told> told(Entry entry, Entry.Value value, String quantity, List<Figure> values) {
    Direction direction = Procedures.direction(quantity);
    List<Told> told = new ArrayList<>(sentences.read(value.heading().text(), direction));
    for (Told t : sentences.read(value.text().text(), direction)) {
      boolean own = values.stream().anyMatch(f -> f.start() == t.figure().start());
      boolean farTime =
          quantities.get(quantity).range()
              && isTime(t)
              && values.stream()
                  .noneMatch(f -> Naming.sameSentence(value.text().text(), f, t.figure()));
      if (!own && !farTime) {
        told.add(t);
      }
    }
    for (int i = entry.labels().size() - 1; i >= 0; i--) {
      told.addAll(sentences.read(entry.labels().get(i).text(), direction));
    }
    addBeside(told, sentences.read(value.conditions().text(), direction), quantity);
    addBeside(told, sentences.read(entry.conditions().text(), direction), quantity);
    addBeside(told, sentences.read(entry.context().text(), Direction.UNKNOWN), quantity);
    return told;
  }
}
