package commonsheet.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Settling what records say, from the command line. */
@Command(
    name = "review",
    description = {
      "Settles what records say: shows each value with its place on the sheet; confirms, corrects,"
          + " rejects or returns it; accepts findings; approves records.",
      "Names of statements and curves are ids such as s3 and c1, or ranges such as s1-s12."
    },
    sortOptions = false,
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {
      ReviewListCommand.class,
      ReviewShowCommand.class,
      ReviewConfirmCommand.class,
      ReviewCorrectCommand.class,
      ReviewAddCommand.class,
      ReviewRejectCommand.class,
      ReviewReturnCommand.class,
      ReviewAcceptCommand.class,
      ReviewPreparedCommand.class,
      ReviewApproveCommand.class,
      ReviewDifferencesCommand.class
    })
final class ReviewCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new CommandLine.ParameterException(
        spec.commandLine(), "say what to do: " + String.join(", ", spec.subcommands().keySet()));
  }
}
