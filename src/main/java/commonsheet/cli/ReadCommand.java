package commonsheet.cli;

import commonsheet.api.RecordFolder;
import commonsheet.export.ComparisonTable;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordValidator;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
      names = "--table",
      paramLabel = "FILE",
      description =
          "Also compare the cells that were read: print the table, and write it to FILE, by its"
              + " ending as CSV, Markdown or plain text.")
  private Path table;

  @Option(
      names = "--without-curves",
      description = "Leave the charts alone: no curves, and no pictures of charts.")
  private boolean withoutCurves;

  @Option(
      names = "--layouts",
      paramLabel = "DIR",
      description = "Folder of your own layout rule files.")
  private Path layouts;

  @Mixin private Recognition recognition;

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
    TimedReader words =
        TimedReader.by(layouts, recognition, PageProgress.on(spec.commandLine().getErr()));
    TimedReader reader = withoutCurves ? words : words.tracing(TimedTracer.by(recognition));
    Ahead.run(RecordValidator::prepare);
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    boolean json = format == OutputFormat.JSON;
    boolean writes = !json || spec.commandLine().getParseResult().hasMatchedOption("--out");
    ReadReport report =
        json
            ? new JsonReport(out, err, InputFiles.isSingleFile(arguments))
            : new TextReport(out, folder);
    List<CellRecord> compared = new ArrayList<>();
    ReadRun run =
        new ReadRun(
            reader,
            writes ? new RecordFolder(folder) : null,
            report,
            table == null ? record -> {} : compared::add,
            err);
    ReadCounts counts = run.read(InputFiles.find(arguments, ".pdf"));
    boolean compares = !compared.isEmpty();
    if (compares) {
      compare(ComparisonTable.of(compared), json, out);
    }
    report.end(counts);
    if (compares && !json) {
      out.println("Comparison in " + table);
    }
    return counts.status();
  }

  private void compare(ComparisonTable comparison, boolean json, PrintWriter out)
      throws CommandException {
    TableFormat.of(table).write(comparison, table);
    if (!json) {
      out.println();
      TableFormat.TERMINAL.print(comparison, out);
      out.println();
    }
  }
}
