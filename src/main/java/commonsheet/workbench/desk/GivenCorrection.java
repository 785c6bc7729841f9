package commonsheet.workbench.desk;

import commonsheet.export.AmountText;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.CellRecord;
import commonsheet.record.Evidence;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.review.Correction;
import commonsheet.review.ReviewException;
import commonsheet.workbench.http.Given;
import java.util.Locale;

/** A correction as a page gives it. */
final class GivenCorrection {
  private final Given given;

  private GivenCorrection(Given given) {
    this.given = given;
  }

  static NamedDeed deed(Given given) {
    String id = given.required("id");
    String remark = given.text("remark");
    GivenCorrection correction = new GivenCorrection(given);
    return new NamedDeed(
        "correct " + id,
        (settling, record) -> {
          GivenDeed.exists(id, record);
          return settling.corrected(record, id, correction.of(record, id), remark);
        });
  }

  private Correction of(CellRecord record, String id) throws ReviewException {
    Statement statement = record.statement(id);
    Correction correction = statement == null ? ofCurve() : ofStatement(statement);
    if (correction.isEmpty()) {
      throw new ReviewException("nothing is corrected; confirm the value, or say what is wrong");
    }
    return correction;
  }

  private Correction ofCurve() throws ReviewException {
    String label = given.text("label");
    return new Correction(
        null,
        null,
        null,
        false,
        GivenConditions.of(given.object("conditions")),
        label == null || label.isBlank() ? null : label.strip());
  }

  private Correction ofStatement(Statement statement) throws ReviewException {
    String quantity = quantity(given);
    String wanted = quantity == null ? statement.quantity() : quantity;
    String typed = given.text("typed");
    TypedAmount amount = amount(typed, wanted, statement);
    Statistic said = given.has("statistic") ? statistic(given) : null;
    Evidence place = GivenPlace.of(given.object("place"), typed);
    return new Correction(
        wanted.equals(statement.quantity()) ? null : wanted,
        amount == null ? null : amount.value(),
        amount != null && amount.value() == null,
        amount == null ? null : new Correction.Bounds(amount.low(), amount.high()),
        given.has("statistic") || amount == null ? said : amount.statistic(),
        given.has("statistic") && said == null,
        GivenConditions.of(given.object("conditions")),
        null,
        place);
  }

  /** What was typed, or null where nothing was or it is what the statement says already. */
  private static TypedAmount amount(String typed, String quantity, Statement statement)
      throws ReviewException {
    boolean same =
        quantity.equals(statement.quantity())
            && AmountText.exact(
                    statement.value(), statement.low(), statement.high(), statement.unit())
                .equals(typed);
    return typed == null || same
        ? null
        : TypedAmount.of(typed, QuantityCatalogue.standard().get(quantity).unit());
  }

  /** The quantity of a name, or null where none is given. */
  static String quantity(Given given) {
    String name = given.text("quantity");
    return name == null ? null : QuantityCatalogue.standard().get(name).name();
  }

  /** The statistic of a name; null for none. */
  static Statistic statistic(Given given) throws ReviewException {
    String name = given.text("statistic");
    if (name == null || name.isBlank()) {
      return null;
    }
    try {
      return Statistic.valueOf(name.strip().toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException none) {
      throw new ReviewException(
          "\"" + name + "\" is none of nominal, typical, rated, minimum, maximum, standard");
    }
  }
}
