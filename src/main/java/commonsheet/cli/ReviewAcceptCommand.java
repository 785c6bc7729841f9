package commonsheet.cli;

import commonsheet.record.CellRecord;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lets a finding stand for a reason. */
@Command(
    name = "accept",
    description = "Lets the findings of a rule stand, for a reason that is recorded.",
    sortOptions = false)
final class ReviewAcceptCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private ReviewWork work;

  @Parameters(index = "1", paramLabel = "RULE", description = "The rule, such as relation/energy.")
  private String rule;

  @Option(
      names = "--about",
      paramLabel = "ID",
      description = "Only findings about this statement or curve; may be given several times.")
  private List<String> about = List.of();

  @Option(
      names = "--reason",
      paramLabel = "TEXT",
      required = true,
      description = "Why it may stand.")
  private String reason;

  @Override
  public Integer call() throws CommandException {
    CellRecord record =
        work.change((settling, before) -> settling.accepted(before, rule, about, reason));
    ReviewWork.tellProgress(record, spec.commandLine().getOut());
    return ExitStatus.DONE;
  }
}
