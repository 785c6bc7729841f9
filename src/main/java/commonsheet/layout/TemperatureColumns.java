package commonsheet.layout;

import commonsheet.layout.Sentences.Direction;
import commonsheet.quantity.Bound;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.QuantityCatalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A temperature range whose ends stand in a minimum and a maximum column. */
final class TemperatureColumns {
  private final Figures parser;
  private final Sentences sentences;
  private final Terms terms;
  private final QuantityCatalogue quantities;
  private final Candidates candidates;

  TemperatureColumns(
      Figures parser,
      Sentences sentences,
      Terms terms,
      QuantityCatalogue quantities,
      Candidates candidates) {
    this.parser = parser;
    this.sentences = sentences;
    this.terms = terms;
    this.quantities = quantities;
    this.candidates = candidates;
  }

  List<Candidate> read(Entry entry, Set<String> outer) {
    Optional<Figure> low = single(entry, Role.MINIMUM);
    Optional<Figure> high = single(entry, Role.MAXIMUM);
    Optional<Term> term =
        terms.fitting(outer).stream().filter(t -> quantities.get(t.quantity()).range()).findFirst();
    if (low.isEmpty() || high.isEmpty() || term.isEmpty()) {
      return List.of();
    }
    Passage text = passage(entry, Role.MINIMUM).then(passage(entry, Role.MAXIMUM));
    Figure range =
        new Figure(
            0,
            text.text().length(),
            text.text(),
            null,
            low.get().value(),
            high.get().value(),
            Bound.NONE,
            null,
            false,
            low.get().unit(),
            false);
    List<Told> told = new ArrayList<>();
    entry.labels().forEach(l -> told.addAll(sentences.read(l.text(), Direction.UNKNOWN)));
    entry
        .values()
        .forEach(v -> told.addAll(sentences.read(v.conditions().text(), Direction.UNKNOWN)));
    told.addAll(sentences.read(entry.conditions().text(), Direction.UNKNOWN));
    return List.of(
        candidates.of(entry, entry.layoutRule(), text, term.get().quantity(), null, range, told));
  }

  private static Passage passage(Entry entry, Role role) {
    return entry.values().stream()
        .filter(v -> v.role() == role)
        .map(Entry.Value::text)
        .findFirst()
        .orElse(Passage.EMPTY);
  }

  private Optional<Figure> single(Entry entry, Role role) {
    for (Entry.Value value : entry.values()) {
      if (value.role() == role) {
        List<Figure> figures = new LabelUnits(parser).figures(value.text().text(), value.unit());
        if (figures.size() == 1
            && figures.get(0).value() != null
            && figures.get(0).unit() != null
            && figures.get(0).unit().dimension() == Dimension.TEMPERATURE) {
          return Optional.of(figures.get(0));
        }
      }
    }
    return Optional.empty();
  }
}
