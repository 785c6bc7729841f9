package commonsheet.workbench.desk;

import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.CellRecord;
import commonsheet.record.Evidence;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.review.ReviewException;
import commonsheet.workbench.http.Given;
import java.util.List;
import java.util.Locale;

/** A value that a person adds, as a page gives it. */
final class GivenStatement {
  private GivenStatement() {}

  static NamedDeed deed(Given given) {
    String quantity = QuantityCatalogue.standard().get(given.required("quantity")).name();
    String label = QuantityCatalogue.standard().get(quantity).label();
    String remark = given.text("remark");
    return new NamedDeed(
        "add " + label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1),
        (settling, record) -> settling.added(record, of(given, quantity, record), remark));
  }

  private static Statement of(Given given, String quantity, CellRecord record)
      throws ReviewException {
    String unit = QuantityCatalogue.standard().get(quantity).unit();
    String typed = given.text("typed");
    TypedAmount amount = TypedAmount.of(typed, unit);
    Statistic statistic =
        given.has("statistic") ? GivenCorrection.statistic(given) : amount.statistic();
    return new Statement(
        "s1",
        quantity,
        statistic,
        amount.value(),
        amount.low(),
        amount.high(),
        unit,
        GivenConditions.stated(given.object("conditions")),
        evidence(given, typed.strip(), record),
        Standing.CORRECTED,
        List.of());
  }

  private static Evidence evidence(Given given, String typed, CellRecord record)
      throws ReviewException {
    Evidence place = GivenPlace.of(given.object("place"), typed);
    if (place != null) {
      return place;
    }
    if (record.source().isDocument()) {
      throw new ReviewException("draw a box around the place where it stands on the sheet");
    }
    Given seen = given.object("seen");
    return Seen.of(
        seen == null ? record.source() : Seen.given(record.source().title(), seen), typed);
  }
}
