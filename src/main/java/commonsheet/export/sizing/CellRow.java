package commonsheet.export.sizing;

import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.record.CellRecord;
import commonsheet.record.Evidence;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A cell as one flat row. What its sheet states several times has the statement that rows.yaml
 * prefers, and how many others there are.
 *
 * @param origin which cell, from which sheet
 * @param stated by the name of the quantity's columns, the statement taken first; none where the
 *     sheet does not state it
 * @param grid the cell's look-up grid, or why there is none
 */
record CellRow(CellOrigin origin, Map<String, List<Statement>> stated, Digitised grid) {
  CellRow {
    stated = Map.copyOf(stated);
  }

  static CellRow of(CellRecord record, Digitised grid) {
    Map<String, List<Statement>> stated = new LinkedHashMap<>();
    for (RowQuantity quantity : RowLayout.standard().columns()) {
      List<Statement> all = new ArrayList<>(quantity.statements(record));
      Figure compared = quantity.compared(grid.figures());
      if (compared != null && compared.isKnown()) {
        String id = compared.from().get(0);
        all.sort(Comparator.comparing(statement -> !statement.id().equals(id)));
      }
      stated.put(quantity.name(), all);
    }
    return new CellRow(CellOrigin.of(record), stated, grid);
  }

  /** From the separation of discharge curves, in mOhm. */
  Figure resistance() {
    return grid.figures().get(Measure.CURVE_RESISTANCE);
  }

  /** The statement taken, or null where the sheet does not state the quantity. */
  Statement taken(RowQuantity quantity) {
    List<Statement> all = stated.get(quantity.name());
    return all.isEmpty() ? null : all.get(0);
  }

  /** How many other statements of the quantity the record has, or null where it has none at all. */
  Integer others(RowQuantity quantity) {
    List<Statement> all = stated.get(quantity.name());
    return all.isEmpty() ? null : all.size() - 1;
  }

  /** The pages on which the values taken stand. */
  List<Integer> pages() {
    return stated.values().stream()
        .filter(all -> !all.isEmpty())
        .map(all -> all.get(0).evidence())
        .filter(Objects::nonNull)
        .map(Evidence::page)
        .filter(Objects::nonNull)
        .distinct()
        .sorted()
        .toList();
  }

  /**
   * The names of the quantities whose value stands as unsure, or of which the sheet states several
   * that contradict each other; the resistance and the grid included.
   */
  List<String> unsure() {
    List<String> unsure = new ArrayList<>();
    for (RowQuantity quantity : RowLayout.standard().columns()) {
      Statement taken = taken(quantity);
      Figure compared = quantity.compared(grid.figures());
      if (taken != null
          && (taken.standing() == Standing.UNSURE || (compared != null && compared.unsure()))) {
        unsure.add(quantity.name());
      }
    }
    if (resistance().unsure()) {
      unsure.add(RowFields.RESISTANCE);
    }
    if (grid.table() != null && grid.table().unsure()) {
      unsure.add(RowFields.TABLE);
    }
    return unsure;
  }

  /** The names of the quantities that the sheet does not state or that no curves give. */
  List<String> missing() {
    List<String> missing = new ArrayList<>();
    for (RowQuantity quantity : RowLayout.standard().columns()) {
      if (taken(quantity) == null) {
        missing.add(quantity.name());
      }
    }
    if (!resistance().isKnown()) {
      missing.add(RowFields.RESISTANCE);
    }
    if (grid.table() == null) {
      missing.add(RowFields.TABLE);
    }
    return missing;
  }
}
