package commonsheet.cli;

import commonsheet.export.ComparisonTable;
import commonsheet.record.CellRecord;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints records side by side. */
@Command(
    name = "table",
    description = "Compares records side by side, each figure under its own conditions.",
    sortOptions = false)
final class TableCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--format",
      description =
          "terminal, csv or markdown; by the ending of --out when none is given, else terminal.")
  private TableFormat format;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write the table to FILE instead of printing it.")
  private Path file;

  @Parameters(
      arity = "1..*",
      paramLabel = "RECORD|FOLDER",
      description = "Record files, or folders to search for .json files.")
  private List<Path> arguments;

  @Override
  public Integer call() throws CommandException {
    RecordFiles files = RecordFiles.read(arguments, spec.commandLine().getErr());
    List<CellRecord> records = files.contents();
    if (records.isEmpty()) {
      return ExitStatus.NONE_READABLE;
    }
    ComparisonTable table = ComparisonTable.of(records);
    if (file == null) {
      (format == null ? TableFormat.TERMINAL : format).print(table, spec.commandLine().getOut());
    } else {
      (format == null ? TableFormat.of(file) : format).write(table, file);
    }
    return files.status();
  }
}
