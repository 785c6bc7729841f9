package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.review.Ids;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says that values stand on the sheet as they were read. */
@Command(
    name = "confirm",
    description = {
      "Says that you compared values with the sheet and agree. Each is printed with its place.",
      "A range takes in what stands as read; what is unsure has to be named by itself, so that"
          + " nothing doubtful is waved through. There is no way to confirm everything unnamed."
    },
    sortOptions = false)
final class ReviewConfirmCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private ReviewWork work;

  @Parameters(index = "1..*", arity = "1..*", paramLabel = "ID", description = "What you confirm.")
  private List<String> ids;

  @Override
  public Integer call() throws CommandException {
    PrintWriter out = spec.commandLine().getOut();
    List<String> named = new ArrayList<>();
    List<String> leftOut = new ArrayList<>();
    CellRecord record =
        work.change(
            (settling, before) -> {
              Ids found = Ids.of(ids, before);
              named.addAll(found.named());
              leftOut.addAll(found.leftOut());
              return named.isEmpty() ? before : settling.confirmed(before, named);
            });
    named.forEach(id -> out.println(PartLine.of(record, id)));
    if (!leftOut.isEmpty()) {
      out.println(
          "left out, since unsure: "
              + String.join(", ", leftOut)
              + "; look at them and name them one by one");
    }
    ReviewWork.tellProgress(record, out);
    return ExitStatus.DONE;
  }
}
