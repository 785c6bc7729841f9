package commonsheet.layout;

import commonsheet.quantity.FigureParser;
import commonsheet.quantity.NumberStyle;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Finding;
import commonsheet.record.RecordIds;
import commonsheet.record.Review;
import commonsheet.record.Severity;
import commonsheet.record.Source;
import commonsheet.record.Statement;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.Table;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Reads a sheet: from its words, lines and tables to records with evidence for every value. */
public final class RecordReader {
  /** A sheet that says less than this about capacity, voltage and current is no cell's datasheet. */
  private static final int FEWEST_STATEMENTS = 3;

  private final LayoutLibrary library;
  private final QuantityCatalogue quantities = QuantityCatalogue.standard();
  private final Terms terms = Resources.terms();
  private final Identity.IdentityWords identityWords = Resources.identityWords();

  public RecordReader(LayoutLibrary library) {
    this.library = library;
  }

  /** Reads a sheet; a sheet of something else gives no record and a reason. */
  public Reading read(Sheet sheet) {
    LayoutLibrary.Choice choice = library.choose(sheet);
    String text = LayoutLibrary.textOf(sheet);
    List<String> languages = Languages.of(text);
    Vocabulary vocabulary = vocabulary(choice.rule(), languages);
    FigureParser parser = new FigureParser(numberStyle(choice.rule(), text));
    List<Outcome> outcomes = new ArrayList<>();
    Identity identity = new Identity(vocabulary, identityWords);
    Cell cell = withDefaults(identity.cell(sheet), choice.rule().defaults());
    List<Candidate> candidates = candidates(sheet, choice.rule(), vocabulary, parser, outcomes);
    candidates.addAll(new Drawings(parser).read(sheet, cell.model(), cell.sizeCode()));
    Explanation explanation =
        new Explanation(choice.rule().name() + " " + choice.rule().version(), choice.why(), languages, outcomes);
    Optional<String> other = identity.otherChemistry(sheet);
    if (other.isPresent()) {
      return new Reading(List.of(), explanation, "describes a " + other.get() + " cell, not a lithium-ion one; leave it out");
    }
    List<CellRecord> records = records(sheet, choice.rule(), languages, identity, cell, candidates);
    if (records.isEmpty()) {
      return new Reading(List.of(), explanation, nothingRead(sheet));
    }
    return new Reading(records, explanation, null);
  }

  private static String nothingRead(Sheet sheet) {
    List<Integer> pictures = sheet.pages().stream().filter(p -> p.words().isEmpty()).map(Page::number).toList();
    if (pictures.size() == sheet.pages().size()) {
      return "has no words to read, only pictures; use a version of the sheet with text";
    }
    return "does not read like the datasheet of a lithium-ion cell; check that it is one";
  }

  private static NumberStyle numberStyle(LayoutRule rule, String text) {
    String numbers = rule.defaults().numbers();
    if (numbers == null) {
      return NumberStyle.of(text);
    }
    return numbers.equals("decimal-comma") ? NumberStyle.DECIMAL_COMMA : NumberStyle.DECIMAL_POINT;
  }

  private static Vocabulary vocabulary(LayoutRule rule, List<String> languages) {
    Vocabulary vocabulary = new Vocabulary();
    vocabulary.addLabels(rule.labels().stream().map(LabelRule::asPhrases).toList());
    vocabulary.addPhrases(rule.phrases());
    vocabulary.addHeadings(rule.headings());
    vocabulary.addIdentity(rule.identity());
    if (!rule.ignore().isEmpty()) {
      vocabulary.addPhrases(List.of(new Vocabulary.Phrases("appearance", rule.ignore())));
    }
    for (String code : languages) {
      Resources.Language language = Resources.language(code);
      vocabulary.addPhrases(language.phrases());
      vocabulary.addHeadings(language.columns());
      vocabulary.addIdentity(language.identity());
    }
    return vocabulary;
  }

  private List<Candidate> candidates(
      Sheet sheet, LayoutRule rule, Vocabulary vocabulary, FigureParser parser, List<Outcome> outcomes) {
    Refinement refinement = new Refinement(rule);
    Footnotes footnotes = Footnotes.of(sheet);
    StandardDischarge standardDischarge = new StandardDischarge(vocabulary);
    EntryReader reader = new EntryReader(vocabulary, terms, quantities, parser);
    List<Candidate> candidates = new ArrayList<>();
    Naming naming = new Naming(vocabulary, terms, quantities);
    for (Entry entry : entries(sheet, vocabulary, parser, naming, footnotes)) {
      if (refinement.ignores(entry)) {
        outcomes.add(refinement.ignored(entry));
        continue;
      }
      Entry noted = refinement.prepared(withFootnotes(entry, footnotes));
      if (!noted.layoutRule().equals("footnote")) {
        candidates.addAll(standardDischarge.awaiting(noted, refinement.completed(noted, reader.read(noted, outcomes))));
      }
      candidates.addAll(reader.mentions(noted));
    }
    return standardDischarge.resolve(AfterAbove.inherit(candidates));
  }

  private static Entry withFootnotes(Entry entry, Footnotes footnotes) {
    List<Passage> marked = new ArrayList<>(entry.labels());
    entry.values().forEach(v -> marked.add(v.text()));
    entry.values().forEach(v -> marked.add(v.conditions()));
    marked.add(entry.conditions());
    Passage notes = footnotes.pointedToBy(marked);
    return notes.isBlank()
        ? entry
        : new Entry(
            entry.page(),
            entry.labels(),
            entry.values(),
            entry.conditions().then(notes),
            entry.context(),
            entry.section(),
            entry.method(),
            entry.layoutRule());
  }

  private static List<Entry> entries(
      Sheet sheet, Vocabulary vocabulary, FigureParser parser, Naming naming, Footnotes footnotes) {
    Clauses clauses = new Clauses(vocabulary, parser, naming);
    Tables tables = new Tables(vocabulary, parser, naming);
    SharedRows sharedRows = new SharedRows(naming::standsAlone);
    List<Entry> entries = new ArrayList<>(footnotes.entries());
    String section = "";
    Tables.Carry carry = null;
    for (Page page : sheet.pages()) {
      Clauses.Found found = clauses.entries(page, section, footnotes.lines(page.number()));
      entries.addAll(found.entries());
      boolean first = true;
      for (Table table : page.tables()) {
        Optional<Clauses.Heading> above = headingAbove(table, found.headings());
        String heading = above.map(Clauses.Heading::text).orElse(section);
        Passage context = above.map(h -> paragraphs(h, found.headings())).orElse(Passage.EMPTY);
        Table parted = sharedRows.parted(table);
        Tables.Result result = tables.entries(page.number(), parted, heading, context, first || carry != null && carry.hasModels() ? carry : null);
        first = false;
        entries.addAll(result.entries());
        carry = result.carry();
      }
      section = found.lastSection();
    }
    return entries;
  }

  private static Optional<Clauses.Heading> headingAbove(Table table, List<Clauses.Heading> headings) {
    return headings.stream()
        .filter(h -> h.y() <= table.box().y() + 2 && h.x() < table.box().right())
        .max(Comparator.comparingDouble(Clauses.Heading::y));
  }

  /** All that stands under a heading since its last numbered clause, down to the place of the last paragraph above the table. */
  private static Passage paragraphs(Clauses.Heading last, List<Clauses.Heading> headings) {
    Passage all = Passage.EMPTY;
    for (Clauses.Heading heading : headings) {
      if (heading.y() <= last.y() && heading.text().equals(last.text())) {
        all = heading.numbered() ? heading.paragraph() : all.then(heading.paragraph());
      }
    }
    return all;
  }

  private List<CellRecord> records(
      Sheet sheet,
      LayoutRule rule,
      List<String> languages,
      Identity identity,
      Cell cell,
      List<Candidate> candidates) {
    Source source = source(sheet, rule, languages, identity);
    List<String> models = candidates.stream().map(Candidate::model).filter(Objects::nonNull).distinct().toList();
    List<CellRecord> records = new ArrayList<>();
    if (models.isEmpty()) {
      records.add(record(sheet, cell, source, candidates));
    }
    for (String model : models) {
      List<Candidate> own = candidates.stream().filter(c -> c.model() == null || c.model().equals(model)).toList();
      Cell named =
          new Cell(cell.maker(), model, cell.designation(), cell.chemistry(), cell.form(), cell.sizeCode(), cell.evidence());
      records.add(record(sheet, named, source, own));
    }
    records.removeIf(r -> !isCell(r));
    return records;
  }

  private CellRecord record(Sheet sheet, Cell cell, Source source, List<Candidate> candidates) {
    List<Statement> statements = new Reconciler(quantities).decide(candidates);
    String id = RecordIds.of(cell.maker(), cell.model(), sheet.file());
    return new CellRecord(CellRecord.SCHEMA, id, cell, source, statements, List.of(), pictures(sheet), Review.DRAFT);
  }

  private static boolean isCell(CellRecord record) {
    long core =
        record.statements().stream()
            .map(Statement::quantity)
            .filter(q -> q.equals("capacity") || q.endsWith("oltage") || q.endsWith("Current"))
            .distinct()
            .count();
    return core >= FEWEST_STATEMENTS;
  }

  private static Cell withDefaults(Cell cell, LayoutRule.Defaults defaults) {
    return new Cell(
        cell.maker() == null ? defaults.maker() : cell.maker(),
        cell.model(),
        cell.designation(),
        cell.chemistry() == null ? defaults.chemistry() : cell.chemistry(),
        cell.form() == null ? defaults.form() : cell.form(),
        cell.sizeCode(),
        cell.evidence());
  }

  private static Source source(Sheet sheet, LayoutRule rule, List<String> languages, Identity identity) {
    return new Source(
        sheet.title() == null || sheet.title().isBlank() ? null : sheet.title().trim(),
        identity.labelled(sheet, "document").map(Identity.Found::text).orElse(null),
        identity.labelled(sheet, "revision").map(Identity.Found::text).orElse(null),
        identity.labelled(sheet, "date").map(Identity.Found::text).orElse(null),
        sheet.file(),
        sheet.sha256(),
        sheet.pages().size(),
        String.join(",", languages),
        new Source.Layout(rule.name(), rule.version()));
  }

  private static List<Finding> pictures(Sheet sheet) {
    List<Finding> findings = new ArrayList<>();
    for (Page page : sheet.pages()) {
      switch (page.kind()) {
        case PICTURE ->
            findings.add(
                new Finding(
                    "sheet/picture-page",
                    Severity.WARNING,
                    List.of(),
                    "page " + page.number() + " is a picture: no words to read",
                    "common practice, no source"));
        case PARTLY_PICTURE ->
            findings.add(
                new Finding(
                    "sheet/picture-on-page",
                    Severity.NOTE,
                    List.of(),
                    "page " + page.number() + " holds a picture that may show figures; only its words were read",
                    "common practice, no source"));
        default -> {}
      }
    }
    return findings;
  }

  /** The conditions of what is recovered after storage are those of the storage, stated for what is retained. */
  private static final class AfterAbove {
    private AfterAbove() {}

    static List<Candidate> inherit(List<Candidate> candidates) {
      List<Candidate> all = new ArrayList<>();
      Candidate retained = null;
      for (Candidate c : candidates) {
        if (c.quantity().equals("capacityRetention") && !c.mentioned()) {
          retained = c;
        }
        boolean lacks =
            c.quantity().equals("capacityRecovery")
                && c.conditions().get(Conditions.DURATION) == null
                && c.conditions().get(Conditions.TEMPERATURE) == null;
        if (lacks && retained != null && c.page() - retained.page() <= 1) {
          all.add(c.with(c.conditions().withMissingFrom(retained.conditions())));
        } else {
          all.add(c);
        }
      }
      return all;
    }
  }
}
