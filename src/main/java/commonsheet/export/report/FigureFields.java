package commonsheet.export.report;

import commonsheet.compare.Figure;
import java.util.List;
import java.util.function.Function;

/** The three numbers of a figure as columns. */
final class FigureFields {
  private FigureFields() {}

  /**
   * Value, low and high.
   *
   * @param prefix before their names
   * @param unit UCUM code, or null where it differs from row to row
   * @param of what they are numbers of, in words
   */
  static <T> List<Field<T>> of(String prefix, String unit, String of, Function<T, Figure> figure) {
    return List.of(
        Field.number(
            prefix + "value",
            unit,
            "Value",
            "Value of " + of + "; empty where only a bound or nothing is known.",
            row -> figure.apply(row).value()),
        Field.number(
            prefix + "low",
            unit,
            "Low",
            "Lower end of what " + of + " may be; empty where not known.",
            row -> figure.apply(row).low()),
        Field.number(
            prefix + "high",
            unit,
            "High",
            "Upper end of what " + of + " may be; empty where not known.",
            row -> figure.apply(row).high()));
  }
}
