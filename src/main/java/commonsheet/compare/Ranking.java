package commonsheet.compare;

import commonsheet.record.CellRecord;
import java.util.Comparator;

/**
 * The order of a shortlist: by verdict, then by a measure, best first. A cell of which only a bound
 * is known comes behind those whose figure is known, for it may do better or worse than its bound
 * says; one of which nothing is known comes last. Equal cells stand in the order of their ids, so
 * that the order in which records were given does not matter.
 */
final class Ranking implements Comparator<Contender> {
  private final Measure measure;

  Ranking(Measure measure) {
    this.measure = measure;
  }

  @Override
  public int compare(Contender first, Contender second) {
    int order = first.verdict().compareTo(second.verdict());
    order = order == 0 ? Integer.compare(knowledge(first), knowledge(second)) : order;
    order = order == 0 ? Double.compare(worth(second), worth(first)) : order;
    order = order == 0 ? name(first).compareTo(name(second)) : order;
    return order == 0 ? sheet(first).compareTo(sheet(second)) : order;
  }

  private int knowledge(Contender contender) {
    Figure figure = contender.cell().figure(measure);
    return figure.isKnown() ? 0 : figure.low() != null || figure.high() != null ? 1 : 2;
  }

  /** Higher is better. A bound counts by its worse end, and by nothing where that one is open. */
  private double worth(Contender contender) {
    Figure figure = contender.cell().figure(measure);
    Double bound = measure.lessIsBetter() ? figure.high() : figure.low();
    Double worse = figure.isKnown() ? figure.value() : bound;
    if (worse == null) {
      return Double.NEGATIVE_INFINITY;
    }
    return measure.lessIsBetter() ? -worse : worse;
  }

  private static String name(Contender contender) {
    return String.valueOf(contender.cell().record().id());
  }

  /** Tells two records of one id apart. */
  private static String sheet(Contender contender) {
    CellRecord record = contender.cell().record();
    return record.source() == null
        ? ""
        : record.source().file()
            + ' '
            + record.source().sha256()
            + ' '
            + record.source().revision();
  }
}
