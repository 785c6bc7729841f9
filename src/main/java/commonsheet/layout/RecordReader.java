package commonsheet.layout;

import commonsheet.quantity.FigureParser;
import commonsheet.quantity.NumberStyle;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Source;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a sheet: from its words, lines and tables to records with evidence for every value. */
public final class RecordReader {
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
    Figures parser = new Figures(new FigureParser(numberStyle(choice.rule(), text)));
    Naming naming = new Naming(vocabulary, terms, quantities);
    List<Entry> entries = new Entries(vocabulary, parser, naming, Footnotes.of(sheet)).of(sheet);
    List<Outcome> outcomes = new ArrayList<>();
    List<Candidate> candidates = candidates(entries, choice.rule(), vocabulary, parser, outcomes);
    Explanation explanation =
        new Explanation(
            choice.rule().name() + " " + choice.rule().version(),
            choice.why(),
            languages,
            outcomes);
    Identity identity = new Identity(vocabulary, identityWords);
    Optional<String> other = identity.otherChemistry(sheet);
    if (other.isPresent()) {
      String reason = "describes a " + other.get() + " cell, not a lithium-ion one; leave it out";
      return new Reading(List.of(), explanation, reason);
    }
    Cell cell = withDefaults(identity.cell(sheet), choice.rule().defaults());
    if (candidates.stream().allMatch(c -> c.model() == null)) {
      candidates.addAll(new Drawings(parser).read(sheet, cell.model(), cell.sizeCode()));
    }
    Source source = source(sheet, choice.rule(), languages, identity);
    List<CellRecord> records =
        new Records(sheet, source, quantities, identityWords.sizes(), identity.modelNames(sheet))
            .of(cell, candidates, entries);
    return new Reading(records, explanation, records.isEmpty() ? nothingRead(sheet) : null);
  }

  private static String nothingRead(Sheet sheet) {
    List<Integer> pictures =
        sheet.pages().stream().filter(p -> p.words().isEmpty()).map(Page::number).toList();
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
      List<Entry> entries,
      LayoutRule rule,
      Vocabulary vocabulary,
      Figures parser,
      List<Outcome> outcomes) {
    Refinement refinement = new Refinement(rule);
    StandardDischarge standardDischarge = new StandardDischarge(vocabulary);
    EntryReader reader = new EntryReader(vocabulary, terms, quantities, parser);
    List<Candidate> candidates = new ArrayList<>();
    for (Entry entry : entries) {
      if (refinement.ignores(entry)) {
        outcomes.add(refinement.ignored(entry));
        continue;
      }
      Entry prepared = refinement.prepared(entry);
      if (!prepared.layoutRule().equals("footnote")) {
        List<Candidate> read = refinement.completed(prepared, reader.read(prepared, outcomes));
        candidates.addAll(standardDischarge.awaiting(prepared, read));
      }
      candidates.addAll(reader.mentions(prepared));
    }
    List<Candidate> resolved = standardDischarge.resolve(AfterAbove.inherit(candidates));
    resolved.replaceAll(CycleLife::counted);
    resolved.replaceAll(c -> c.withDefaults(rule.defaultConditions(c.quantity()), rule.name()));
    return resolved;
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

  private static Source source(
      Sheet sheet, LayoutRule rule, List<String> languages, Identity identity) {
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
}
