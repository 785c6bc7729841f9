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

/** Says that the sheet does not say something. */
@Command(
    name = "reject",
    description = "Says that the sheet does not say these values, so that they are left out.",
    sortOptions = false)
final class ReviewRejectCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private ReviewWork work;

  @Parameters(index = "1..*", arity = "1..*", paramLabel = "ID", description = "What you reject.")
  private List<String> ids;

  @Option(names = "--reason", paramLabel = "TEXT", description = "Why.")
  private String reason;

  @Override
  public Integer call() throws CommandException {
    CellRecord record =
        work.change(
            (settling, before) -> settling.rejected(before, Ids.of(ids, before).named(), reason));
    ReviewWork.tellProgress(record, spec.commandLine().getOut());
    return ExitStatus.DONE;
  }
}
