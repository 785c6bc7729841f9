package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.record.ReadRecord;
import commonsheet.record.Review;
import commonsheet.review.Approval;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Proves approvals. */
@Command(
    name = "verify",
    description = {
      "Proves the approvals of records: the content is the one that was approved, all of it was"
          + " settled, no error is open, and nobody approved their own work without saying so.",
      "Ends with status 7 where an approval does not hold."
    },
    sortOptions = false)
final class VerifyCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--all-approved",
      description = "A draft counts as a failure too, for folders of approved records only.")
  private boolean allApproved;

  @Parameters(
      arity = "1..*",
      paramLabel = "FOLDER|RECORD",
      description = "Record files, or folders to search for .json files.")
  private List<Path> arguments;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    RecordFiles files = RecordFiles.read(arguments, spec.commandLine().getErr());
    int approved = 0;
    int drafts = 0;
    int failing = 0;
    for (ReadRecord stored : files.records()) {
      CellRecord record = stored.record();
      List<String> faults = Approval.faults(record);
      faults.forEach(fault -> out.println(stored.file() + ": " + fault));
      if (!faults.isEmpty()) {
        failing++;
      } else if (record.review().state().equals(Review.DRAFT_STATE)) {
        drafts++;
        if (allApproved) {
          out.println(stored.file() + ": it is a draft");
        }
      } else {
        approved++;
      }
    }
    out.println(
        SheetLine.count(approved, "approval")
            + (approved == 1 ? " holds, " : " hold, ")
            + failing
            + (failing == 1 ? " does not, " : " do not, ")
            + SheetLine.count(drafts, "draft"));
    out.flush();
    boolean found = failing > 0 || (allApproved && drafts > 0);
    return found ? ExitStatus.FOUND : files.status();
  }
}
