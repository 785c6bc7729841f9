package commonsheet.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads datasheets and writes a record per cell. */
@Command(
    name = "read",
    description = "Reads datasheets and writes a record per cell.",
    sortOptions = false)
final class ReadCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for the records; ${DEFAULT-VALUE} when none is given.",
      defaultValue = "records")
  private Path folder;

  @Option(
      names = "--layouts",
      paramLabel = "DIR",
      description = "Folder of your own layout rule files.")
  private Path layouts;

  @Option(
      names = "--format",
      description =
          "text: a line per sheet. json: the records on standard output, and in files only with"
              + " --out.",
      defaultValue = "text")
  private OutputFormat format;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE|FOLDER",
      description = "Datasheets, or folders to search for .pdf files.")
  private List<Path> arguments;

  @Override
  public Integer call() throws CommandException, InterruptedException {
    TimedReader reader = TimedReader.by(Layouts.load(layouts));
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    boolean json = format == OutputFormat.JSON;
    boolean writes = !json || spec.commandLine().getParseResult().hasMatchedOption("--out");
    ReadReport report =
        json
            ? new JsonReport(out, err, InputFiles.isSingleFile(arguments))
            : new TextReport(out, folder);
    ReadRun run =
        new ReadRun(reader, writes ? new RecordFolder(folder) : null, report, record -> {}, err);
    return run.read(InputFiles.find(arguments, ".pdf")).status();
  }
}
