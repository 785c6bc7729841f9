package commonsheet.layout;

import commonsheet.layout.Sentences.Direction;
import commonsheet.quantity.Bound;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.record.Statistic;
import java.util.List;
import java.util.Optional;

/**
 * A limit of the current that stands as a remark beside a temperature range: "0 to 20 °C ≤ 0.3 C".
 */
final class TemperatureLimits {
  private final Figures parser;
  private final Sentences sentences;
  private final Candidates candidates;

  TemperatureLimits(Figures parser, Sentences sentences, Candidates candidates) {
    this.parser = parser;
    this.sentences = sentences;
    this.candidates = candidates;
  }

  /**
   * The limit beside a charge or discharge temperature, if the remark gives both its range and its
   * current.
   */
  List<Candidate> read(Entry entry, String temperature, Passage remark) {
    String quantity =
        switch (temperature) {
          case "chargeTemperature" -> "maximumChargeCurrent";
          case "dischargeTemperature" -> "maximumContinuousDischargeCurrent";
          default -> null;
        };
    List<Figure> figures = parser.find(remark.text());
    boolean range = figures.stream().anyMatch(f -> f.isRange() && is(f, Dimension.TEMPERATURE));
    Optional<Figure> limit =
        figures.stream()
            .filter(
                f ->
                    f.bound() == Bound.AT_MOST
                        && (is(f, Dimension.RATE) || is(f, Dimension.CURRENT)))
            .findFirst();
    if (quantity == null || !range || limit.isEmpty()) {
      return List.of();
    }
    Direction direction = Procedures.direction(quantity);
    List<Told> told =
        sentences.read(remark.text(), direction).stream()
            .filter(t -> t.figure().start() != limit.get().start())
            .toList();
    return List.of(
        candidates.of(
            entry, entry.layoutRule(), remark, quantity, Statistic.MAXIMUM, limit.get(), told));
  }

  private static boolean is(Figure figure, Dimension dimension) {
    return figure.unit() != null && figure.unit().dimension() == dimension;
  }
}
