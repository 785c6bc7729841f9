package commonsheet.compare;

import commonsheet.record.CellRecord;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * One cell at a common condition.
 *
 * @param record which cell
 * @param condition the same for all cells of a comparison
 * @param figures one for every measure, in their order; what is not known is absent with its reason
 */
public record CellFigures(CellRecord record, Condition condition, Map<Measure, Figure> figures) {
  public CellFigures {
    Map<Measure, Figure> all = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      Figure figure = figures.get(measure);
      all.put(measure, figure == null ? Figure.absent("not computed") : figure);
    }
    figures = Collections.unmodifiableMap(all);
  }

  public Figure figure(Measure measure) {
    return figures.get(measure);
  }
}
