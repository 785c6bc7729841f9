package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A capacity in the name of the model, such as {@code -500mAh}, that the sheet does not give. */
final class ModelCapacity extends NamedRule {
  private static final Pattern CAPACITY =
      Pattern.compile("(?i)(\\d{1,6}(?:[.,]\\d{1,3})?) ?(m?)Ah(?![a-z])");

  /** Names round; a share. */
  private static final double ROUNDING = 0.05;

  ModelCapacity() {
    super("relation/model-and-capacity", Severity.WARNING, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    Optional<Known> capacity = new CellFacts(record).capacity();
    String model = record.cell().model();
    Matcher named = CAPACITY.matcher(model == null ? "" : model);
    if (capacity.isEmpty() || !named.find()) {
      return Stream.empty();
    }
    double number = Double.parseDouble(named.group(1).replace(',', '.'));
    double amperehours = named.group(2).isEmpty() ? number : number / 1000;
    Interval given = capacity.get().range();
    return given.widened(ROUNDING).holds(amperehours)
        ? Stream.empty()
        : Stream.of(
            finding(
                capacity.get().from(),
                "The model "
                    + model
                    + " is named after a capacity of "
                    + Wording.number(amperehours)
                    + " Ah, and the sheet gives "
                    + given.text(4)
                    + " Ah; "
                    + Slips.hint(
                        amperehours / given.high(), "look whether it is the sheet of this model")
                    + "."));
  }
}
