package commonsheet.cli;

import commonsheet.layout.StarterRule;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how a sheet was read, shows it on pictures, and starts a rule file for it. */
@Command(
    name = "explain",
    description =
        "Tells how a datasheet was read: which layout and why, each labelled line and what became"
            + " of it, each chart and its curves.",
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

  @Mixin private Recognition recognition;

  @Option(
      names = "--pictures",
      paramLabel = "DIR",
      description = "Also draw each page with what was read marked on it, as PNG files in DIR.")
  private Path pictures;

  @Option(
      names = "--starter",
      paramLabel = "FILE",
      description = "Also write a starting point for a layout rule of such sheets to FILE.")
  private Path starter;

  @Option(names = "--force", description = "Let --starter write over a file that is there.")
  private boolean force;

  @Parameters(paramLabel = "FILE", description = "The datasheet.")
  private Path file;

  @Override
  public Integer call() throws CommandException, InterruptedException {
    if (starter != null && Files.exists(starter) && !force) {
      throw new CommandException(
          ExitStatus.USAGE,
          starter + " is there already; name another file, or write over it with --force");
    }
    SheetOutcome outcome =
        TimedReader.by(layouts, recognition, PageProgress.on(spec.commandLine().getErr()))
            .tracing(TimedTracer.by(recognition))
            .read(file);
    if (outcome instanceof SheetOutcome.Failed failed) {
      throw new CommandException(ExitStatus.NONE_READABLE, failed.sentence());
    }
    SheetOutcome.Read read = (SheetOutcome.Read) outcome;
    if (page != null && (page < 1 || page > read.sheet().pages().size())) {
      throw new CommandException(
          ExitStatus.USAGE,
          file + " has pages 1 to " + read.sheet().pages().size() + ", and no page " + page);
    }
    PrintWriter out = spec.commandLine().getOut();
    new ExplainReport(out, page).print(file, read);
    if (pictures != null) {
      int drawn = MarkedPages.draw(file, read, page, pictures);
      out.println(SheetLine.count(drawn, "picture") + " in " + pictures + ".");
    }
    if (starter != null) {
      ResultFile.write(starter, StarterRule.of(read.sheet(), read.reading()));
      out.println("A starting point for a layout rule is in " + starter + ".");
    }
    out.flush();
    return ExitStatus.DONE;
  }
}
