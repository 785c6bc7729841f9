package commonsheet.compare;

import java.util.List;

/**
 * A number about one cell, with its bounds and where it comes from; or a bound only; or the reason
 * why there is none.
 *
 * @param value in the unit of its measure; null where only a bound or nothing is known
 * @param low lower end of what it may be, or null where that is not known
 * @param high upper end of what it may be, or null where that is not known
 * @param from ids of the curves and statements of the record that it comes from
 * @param notes for people, one sentence each: how it was got, why it is unsure, or why it is absent
 * @param unsure whether it rests on something that stands as unsure, or on an assumption
 */
public record Figure(
    Double value,
    Double low,
    Double high,
    Origin origin,
    List<String> from,
    List<String> notes,
    boolean unsure) {
  public Figure {
    from = List.copyOf(from);
    notes = List.copyOf(notes);
  }

  /** No figure, for a reason. */
  public static Figure absent(String reason) {
    return new Figure(null, null, null, Origin.ABSENT, List.of(), List.of(reason), false);
  }

  public boolean isKnown() {
    return value != null;
  }
}
