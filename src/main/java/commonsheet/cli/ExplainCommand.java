package commonsheet.cli;

import commonsheet.layout.Explanation;
import commonsheet.layout.Outcome;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how a sheet was read. */
@Command(
    name = "explain",
    description =
        "Tells how a datasheet was read: which layout and why, each labelled line and what became"
            + " of it.",
    sortOptions = false)
final class ExplainCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--page",
      paramLabel = "N",
      description = "Tell of one page only, counted from 1.")
  private Integer page;

  @Option(
      names = "--layouts",
      paramLabel = "DIR",
      description = "Folder of your own layout rule files.")
  private Path layouts;

  @Parameters(paramLabel = "FILE", description = "The datasheet.")
  private Path file;

  @Override
  public Integer call() throws CommandException, InterruptedException {
    SheetOutcome outcome = TimedReader.by(Layouts.load(layouts)).read(file);
    if (outcome instanceof SheetOutcome.Failed failed) {
      throw new CommandException(ExitStatus.NONE_READABLE, failed.sentence());
    }
    SheetOutcome.Read read = (SheetOutcome.Read) outcome;
    if (page != null && (page < 1 || page > read.sheet().pages().size())) {
      throw new CommandException(
          ExitStatus.USAGE,
          file + " has pages 1 to " + read.sheet().pages().size() + ", and no page " + page);
    }
    print(read);
    return ExitStatus.DONE;
  }

  private void print(SheetOutcome.Read read) {
    PrintWriter out = spec.commandLine().getOut();
    Explanation explanation = read.reading().explanation();
    out.println(
        file
            + ": "
            + SheetLine.count(read.sheet().pages().size(), "page")
            + ", read as "
            + String.join(", ", explanation.languages()));
    out.println("Layout " + explanation.layout() + ": " + explanation.why() + ".");
    if (read.reading().reason() != null) {
      out.println("No record: " + read.reading().reason() + ".");
    }
    List<Outcome> outcomes =
        explanation.outcomes().stream()
            .filter(outcome -> page == null || outcome.page() == page)
            .toList();
    int current = 0;
    for (Outcome outcome : outcomes) {
      if (outcome.page() != current) {
        current = outcome.page();
        out.println();
        out.println("Page " + current);
      }
      out.println((outcome.matched() ? "  + " : "  - ") + line(outcome));
    }
    out.println();
    long matched = outcomes.stream().filter(Outcome::matched).count();
    out.println(
        matched + " of " + SheetLine.count(outcomes.size(), "labelled line") + " gave a statement.");
    out.flush();
  }

  private static String line(Outcome outcome) {
    return onOneLine(outcome.label())
        + " | "
        + onOneLine(outcome.value())
        + " → "
        + onOneLine(outcome.result());
  }

  private static String onOneLine(String text) {
    return text == null ? "" : text.strip().replaceAll("\\s+", " ");
  }
}
