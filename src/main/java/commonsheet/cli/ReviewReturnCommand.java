package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.review.Ids;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Gives values back to whoever prepared them. */
@Command(
    name = "return",
    description = "Gives values back with a remark; they stand as unsure because of it.",
    sortOptions = false)
final class ReviewReturnCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private ReviewWork work;

  @Parameters(index = "1..*", arity = "1..*", paramLabel = "ID", description = "What you return.")
  private List<String> ids;

  @Option(
      names = "--remark",
      paramLabel = "TEXT",
      required = true,
      description = "What is to be looked at.")
  private String remark;

  @Override
  public Integer call() throws CommandException {
    CellRecord record =
        work.change(
            (settling, before) -> settling.returned(before, Ids.of(ids, before).named(), remark));
    ReviewWork.tellProgress(record, spec.commandLine().getOut());
    return ExitStatus.DONE;
  }
}
