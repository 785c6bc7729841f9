package commonsheet.cli;

import commonsheet.record.StoredRecord;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Approves a record. */
@Command(
    name = "approve",
    description = {
      "Approves a record of which every value is settled and no error is open. Records who, when,"
          + " and the hash of what was approved.",
      "Whoever prepared, corrected or rejected something in it, or accepted a finding, approves it"
          + " only with --own-work, which is recorded."
    },
    sortOptions = false)
final class ReviewApproveCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private ReviewWork work;

  @Option(names = "--own-work", description = "Say that you approve what you prepared yourself.")
  private boolean ownWork;

  @Override
  public Integer call() throws CommandException {
    StoredRecord approved = work.approve(ownWork);
    spec.commandLine()
        .getOut()
        .println(
            approved.record().id()
                + ": approved by "
                + approved.record().review().approvedBy()
                + ", content "
                + approved.record().review().content());
    return ExitStatus.DONE;
  }
}
