package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.review.Settling;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Says who prepared a record. */
@Command(
    name = "prepared",
    description = "Says that you prepared the record, so that another person is to approve it.",
    sortOptions = false)
final class ReviewPreparedCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private ReviewWork work;

  @Override
  public Integer call() throws CommandException {
    CellRecord record = work.change(Settling::prepared);
    ReviewWork.tellProgress(record, spec.commandLine().getOut());
    return ExitStatus.DONE;
  }
}
