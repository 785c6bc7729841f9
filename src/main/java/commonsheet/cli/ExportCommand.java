package commonsheet.cli;

import commonsheet.export.Caution;
import commonsheet.export.sizing.ExportException;
import commonsheet.export.sizing.ExportFolder;
import commonsheet.export.sizing.ExportFormat;
import commonsheet.export.sizing.SizingExport;
import commonsheet.record.CellRecord;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes records in forms that other programs read. */
@Command(
    name = "export",
    description =
        "Writes records for tools that size batteries: rows, voltage tables, linked data.",
    sortOptions = false)
final class ExportCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--format",
      split = ",",
      description = "csv, json, json-ld, or several of them with commas; all if not given.")
  private Set<ExportFormat> formats = EnumSet.allOf(ExportFormat.class);

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "export",
      description = "Folder for the files; ${DEFAULT-VALUE} if not given.")
  private Path folder;

  @Option(
      names = "--cutoff",
      paramLabel = "VOLTAGE",
      converter = Given.Voltage.class,
      description =
          "To which voltage of a cell the voltage tables go; each cell's own cut-off if not given.")
  private Double cutoff;

  @Option(
      names = "--temperature",
      paramLabel = "CELSIUS",
      converter = Given.Temperature.class,
      description = "Of the discharges that voltage tables are made from; 23 °C if not given.")
  private Double temperature;

  @Option(names = "--approved-only", description = "Leave out records that nobody has approved.")
  private boolean approvedOnly;

  @Parameters(
      arity = "1..*",
      paramLabel = "RECORD|FOLDER",
      description = "Record files, or folders to search for .json files.")
  private List<Path> arguments;

  @Override
  public Integer call() throws CommandException {
    refuseOwnFolder();
    PrintWriter err = spec.commandLine().getErr();
    RecordFiles files = RecordFiles.read(arguments, err);
    List<CellRecord> records = approvedOnly ? files.approved(err) : files.contents();
    if (records.isEmpty()) {
      return ExitStatus.NONE_READABLE;
    }
    write(records);
    return files.status();
  }

  private void write(List<CellRecord> records) throws CommandException {
    SizingExport export;
    try {
      export = SizingExport.of(records, cutoff, temperature);
    } catch (ExportException twice) {
      throw new CommandException(ExitStatus.USAGE, twice.getMessage());
    }
    Map<String, String> files = export.files(formats);
    try {
      new ExportFolder(folder).write(files);
    } catch (ExportException unwritten) {
      throw new CommandException(ExitStatus.NOT_WRITTEN, unwritten.getMessage());
    }
    PrintWriter out = spec.commandLine().getOut();
    out.printf(
        "%s, %d with a voltage table, in %d files in %s%n",
        SheetLine.count(records.size(), "cell"), export.tables().size(), files.size(), folder);
    long drafts = records.stream().filter(r -> !RecordFiles.isApproved(r)).count();
    if (drafts > 0) {
      out.println(SheetLine.count(drafts, "record") + " not approved; the files say which.");
    }
    out.println(Caution.TEXT);
    out.flush();
  }

  /** What is exported ends in .json too, and would be taken for records the next time. */
  private void refuseOwnFolder() {
    Path out = folder.toAbsolutePath().normalize();
    for (Path argument : arguments) {
      if (Files.isDirectory(argument) && out.startsWith(argument.toAbsolutePath().normalize())) {
        throw new ParameterException(
            spec.commandLine(),
            String.format(
                "--out %s lies in %s, where its files would be taken for records; name another"
                    + " folder.",
                folder, argument));
      }
    }
  }
}
