package commonsheet.compare;

import commonsheet.record.CellRecord;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The discharges of one cell that serve at a condition, and what they say about any load between
 * their currents.
 */
public final class DischargeFamily {
  private final CellRecord record;
  private final Condition condition;
  private final Deliveries deliveries;

  private DischargeFamily(CellRecord record, Condition condition) {
    this.record = record;
    this.condition = condition;
    this.deliveries =
        new Deliveries(Discharges.of(record, condition), new PrintedModel(record, condition));
  }

  /** What a record's curves and printed values give at the condition's cut-off and temperature. */
  public static DischargeFamily of(CellRecord record, Condition condition) {
    return new DischargeFamily(record, condition);
  }

  /** The discharges used, by ascending current; none where no curve serves. */
  public List<DischargeLine> lines() {
    return members().stream().map(DischargeLines::of).toList();
  }

  /** The cell under a load per cell, every measure with its origin. */
  public CellFigures under(Load load) {
    Map<Measure, Figure> figures = new EnumMap<>(StatedFigures.of(record, condition));
    figures.putAll(new LoadFigures(deliveries, condition).under(load, figures.get(Measure.MASS)));
    return new CellFigures(record, condition.under(load), figures);
  }

  /**
   * Delivered capacity and energy at one constant current, and their mean voltage: the same as
   * {@link #under} gives, without the measures that need more.
   *
   * @param current in A, above 0
   */
  public Map<Measure, Figure> delivered(double current) {
    Delivery delivery = deliveries.at(current);
    return Map.of(
        Measure.DELIVERED_CAPACITY,
        delivery.capacity(),
        Measure.DELIVERED_ENERGY,
        delivery.energy(),
        Measure.MEAN_VOLTAGE,
        delivery.meanVoltage());
  }

  /** The look-up grid over the digitised currents; nothing where fewer than two curves serve. */
  public Optional<VoltageTable> voltageTable() {
    return members().size() < 2
        ? Optional.empty()
        : Optional.of(DischargeLines.table(members(), condition));
  }

  private List<Discharge> members() {
    return deliveries.family().map(RateFamily::members).orElse(List.of());
  }
}
