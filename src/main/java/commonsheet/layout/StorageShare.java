package commonsheet.layout;

import commonsheet.quantity.Bound;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.record.Conditions;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.List;

/**
 * The share of capacity that a storage line promises beside its temperature: "1 year at −20 to 30
 * °C > 70 %". Its conditions are the time and temperatures of the line.
 */
final class StorageShare {
  private final Vocabulary vocabulary;
  private final Figures parser;
  private final Candidates candidates;

  StorageShare(Vocabulary vocabulary, Figures parser, Candidates candidates) {
    this.vocabulary = vocabulary;
    this.parser = parser;
    this.candidates = candidates;
  }

  /** The shares promised beside the storage temperatures read from a piece. */
  List<Candidate> read(Entry entry, Entry.Value own, List<Candidate> temperatures) {
    List<Candidate> found = new ArrayList<>();
    for (Candidate temperature : temperatures) {
      if (temperature.quantity().equals("storageTemperature")
          && temperature.low() != null
          && temperature.high() != null) {
        found.addAll(read(entry, own.text(), temperature));
        found.addAll(read(entry, own.conditions(), temperature));
        entry.labels().forEach(label -> found.addAll(read(entry, label, temperature)));
      }
    }
    return found;
  }

  private List<Candidate> read(Entry entry, Passage text, Candidate temperature) {
    List<Candidate> found = new ArrayList<>();
    boolean recovery = vocabulary.conceptsOf(text.text()).contains("recovery");
    boolean retention = vocabulary.conceptsOf(text.text()).contains("retention");
    for (Figure figure : parser.find(text.text())) {
      boolean bare = figure.bound() != Bound.AT_LEAST;
      if (bare && !recovery && !retention) {
        continue;
      }
      if (figure.unit() == null
          || figure.unit().dimension() != Dimension.RATIO
          || figure.bound() == Bound.AT_MOST
          || figure.value() == null) {
        continue;
      }
      String quantity = recovery ? "capacityRecovery" : "capacityRetention";
      Candidate share =
          candidates.of(
              entry, entry.layoutRule(), text, quantity, Statistic.MINIMUM, figure, List.of());
      Conditions conditions =
          temperature
              .conditions()
              .with(Conditions.TEMPERATURE_LOW, temperature.low())
              .with(Conditions.TEMPERATURE_HIGH, temperature.high());
      share = share.with(conditions);
      if (bare) {
        share = share.doubted("the sheet does not say that this share is the least");
      }
      found.add(
          recovery || retention
              ? share
              : share.doubted("the sheet does not say what this share is of"));
    }
    return found;
  }
}
