package commonsheet.layout;

import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.Table;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Gathers the entries of a whole sheet: its footnotes, then page by page its clauses and its
 * tables.
 */
final class Entries {
  private final Clauses clauses;
  private final Tables tables;
  private final SharedRows sharedRows;
  private final Footnotes footnotes;

  Entries(Vocabulary vocabulary, Figures parser, Naming naming, Footnotes footnotes) {
    this.clauses = new Clauses(vocabulary, parser, naming);
    this.tables = new Tables(vocabulary, parser, naming);
    this.sharedRows = new SharedRows(naming::standsAlone);
    this.footnotes = footnotes;
  }

  List<Entry> of(Sheet sheet) {
    List<Entry> entries = new ArrayList<>(footnotes.entries());
    String section = "";
    Tables.Carry carry = null;
    for (Page printed : sheet.pages()) {
      Page page = LevelLines.mended(printed);
      Clauses.Found found = clauses.entries(page, section, footnotes.lines(page.number()));
      entries.addAll(found.entries());
      boolean first = true;
      for (Table table : page.tables()) {
        Tables.Carry before = first || (carry != null && carry.hasModels()) ? carry : null;
        Tables.Result result = read(page, table, found, section, before);
        entries.addAll(result.entries());
        carry = result.carry();
        first = false;
      }
      section = found.lastSection();
    }
    return entries.stream().map(this::withFootnotes).toList();
  }

  private Tables.Result read(
      Page page, Table table, Clauses.Found found, String section, Tables.Carry before) {
    Optional<Clauses.Heading> above = headingAbove(table, found.headings());
    String heading = above.map(Clauses.Heading::text).orElse(section);
    Passage context = above.map(h -> paragraphs(h, found.headings())).orElse(Passage.EMPTY);
    return tables.entries(page.number(), sharedRows.parted(table), heading, context, before);
  }

  private static Optional<Clauses.Heading> headingAbove(
      Table table, List<Clauses.Heading> headings) {
    return headings.stream()
        .filter(h -> h.y() <= table.box().y() + 2 && h.x() < table.box().right())
        .max(Comparator.comparingDouble(Clauses.Heading::y));
  }

  /**
   * What stands under a heading since its last numbered clause, down to the last paragraph above
   * the table.
   */
  private static Passage paragraphs(Clauses.Heading last, List<Clauses.Heading> headings) {
    Passage all = Passage.EMPTY;
    for (Clauses.Heading heading : headings) {
      if (heading.y() <= last.y() && heading.text().equals(last.text())) {
        all = heading.numbered() ? heading.paragraph() : all.then(heading.paragraph());
      }
    }
    return all;
  }

  private Entry withFootnotes(Entry entry) {
    List<Passage> marked = new ArrayList<>(entry.labels());
    entry.values().forEach(v -> marked.add(v.text()));
    entry.values().forEach(v -> marked.add(v.conditions()));
    marked.add(entry.conditions());
    Passage notes = footnotes.pointedToBy(marked);
    return notes.isBlank() ? entry : entry.with(entry.conditions().then(notes));
  }
}
