package commonsheet.cli;

import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.review.Correction;
import commonsheet.review.ReviewException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Adds a value that reading has not found. */
@Command(
    name = "add",
    description = "Adds a value that stands on the sheet and was not read, with its place.",
    sortOptions = false)
final class ReviewAddCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private ReviewWork work;

  @Option(
      names = "--quantity",
      paramLabel = "NAME",
      required = true,
      description = "Such as mass; docs/record.md lists them with their units.")
  private String quantity;

  @Option(names = "--value", paramLabel = "NUMBER", description = "In the unit of the quantity.")
  private Double value;

  @Option(names = "--range", paramLabel = "LOW..HIGH", description = "Bounds in that unit.")
  private String range;

  @Option(names = "--statistic", paramLabel = "NAME", description = "As the sheet says it.")
  private String statistic;

  @Option(
      names = "--condition",
      paramLabel = "NAME=NUMBER",
      description = "A condition in its unit, such as temperature=25.")
  private List<String> conditions = List.of();

  @Option(names = "--page", paramLabel = "N", required = true, description = "Page, from 1.")
  private Integer page;

  @Option(
      names = "--box",
      paramLabel = "X,Y,WIDTH,HEIGHT",
      required = true,
      description = "The place on the page, in points from its top left.")
  private String box;

  @Option(
      names = "--text",
      paramLabel = "TEXT",
      required = true,
      description = "The words as printed.")
  private String text;

  @Override
  public Integer call() throws CommandException {
    PrintWriter out = spec.commandLine().getOut();
    CellRecord record =
        work.change((settling, before) -> settling.added(before, statement(), null));
    record.review().steps().get(record.review().steps().size() - 1).about().stream()
        .map(id -> PartLine.of(record, id))
        .forEach(out::println);
    ReviewWork.tellProgress(record, out);
    return ExitStatus.DONE;
  }

  private Statement statement() throws ReviewException {
    Correction.Bounds bounds = Typed.bounds(range);
    if (value == null && (bounds == null || bounds.low() == null)) {
      throw new ReviewException("say what the sheet says by --value or --range");
    }
    Conditions stated = Conditions.NONE;
    for (Map.Entry<String, Double> condition : Typed.conditions(conditions).entrySet()) {
      if (condition.getValue() != null) {
        stated = stated.with(condition.getKey(), condition.getValue());
      }
    }
    return new Statement(
        "s1",
        quantity,
        Typed.statistic(statistic),
        value,
        bounds == null ? null : bounds.low(),
        bounds == null ? null : bounds.high(),
        QuantityCatalogue.standard().get(quantity).unit(),
        stated,
        new Evidence(
            page, Typed.box(box), text.strip(), Method.TYPED_IN, null, null, null, null, null),
        Standing.CORRECTED,
        List.of());
  }
}
