package commonsheet.compare;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Review;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Figures of invented cells, set by hand. */
final class Judged {
  static final Condition USUAL = Condition.usual(Load.constant(10));

  private final String id;
  private final Condition condition;
  private final Map<Measure, Figure> figures = new EnumMap<>(Measure.class);

  private Judged(String id, Condition condition) {
    this.id = id;
    this.condition = condition;
  }

  static Judged cell(String id) {
    return new Judged(id, USUAL);
  }

  static Judged cell(String id, Condition condition) {
    return new Judged(id, condition);
  }

  Judged with(Measure measure, double value) {
    return with(measure, known(value));
  }

  Judged with(Measure measure, Figure figure) {
    figures.put(measure, figure);
    return this;
  }

  CellFigures figures() {
    return new CellFigures(record(id, "cylindrical"), condition, figures);
  }

  static CellFigures rated(String id, double rating) {
    return cell(id).with(Measure.CURRENT_RATING, rating).figures();
  }

  static CellRecord record(String id, String form) {
    Cell cell = new Cell(null, id, null, null, form, null, null);
    return new CellRecord(
        CellRecord.SCHEMA, id, cell, null, List.of(), List.of(), List.of(), Review.DRAFT);
  }

  static Figure known(double value) {
    return new Figure(value, null, null, Origin.STATED, List.of("s1"), List.of(), false);
  }

  static Figure atMost(double bound) {
    return new Figure(null, null, bound, Origin.BOUNDED, List.of("c1"), List.of(), false);
  }

  static Figure atLeast(double bound) {
    return new Figure(null, bound, null, Origin.BOUNDED, List.of("c1"), List.of(), false);
  }
}
