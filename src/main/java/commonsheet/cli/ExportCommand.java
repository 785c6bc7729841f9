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
import java.util.ArrayList;
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
    description = "Writes records for tools that size batteries: rows, look-up grids, linked data.",
    sortOptions = false)
final class ExportCommand implements Callable<Integer> {
  private static final String APPROVED = "approved";

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
      paramLabel = "VOLT",
      description = "To which voltage the grids go; each cell's own cut-off if not given.")
  private Double cutoff;

  @Option(
      names = "--temperature",
      paramLabel = "CELSIUS",
      description = "Of the discharges the grids are made of; 23 if not given.")
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
    check("--cutoff", cutoff, 0.5, 5, "V per cell");
    check("--temperature", temperature, -60, 100, "°C");
    refuseOwnFolder();
    RecordsGiven given = RecordsGiven.read(arguments);
    List<CellRecord> records = new ArrayList<>(given.records());
    int unapproved = 0;
    if (approvedOnly) {
      int all = records.size();
      records.removeIf(record -> !APPROVED.equals(record.review().state()));
      unapproved = all - records.size();
    }
    PrintWriter err = spec.commandLine().getErr();
    given.problems().forEach(problem -> err.println("commonsheet: " + problem));
    if (records.isEmpty()) {
      if (unapproved > 0) {
        err.println(
            "commonsheet: none of the records is approved; approve them, or leave out"
                + " --approved-only");
      }
      return ExitStatus.NONE_READABLE;
    }
    write(records, unapproved);
    return ExitStatus.of(records.size(), given.problems().size());
  }

  private void write(List<CellRecord> records, int unapproved) throws CommandException {
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
    long drafts = records.stream().filter(r -> !APPROVED.equals(r.review().state())).count();
    if (drafts > 0) {
      out.println(SheetLine.count((int) drafts, "record") + " not approved; the files say which.");
    }
    if (unapproved > 0) {
      out.println(SheetLine.count(unapproved, "record") + " left out, not approved.");
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

  private void check(String option, Double number, double low, double high, String unit) {
    if (number != null && !(number >= low && number <= high)) {
      throw new ParameterException(
          spec.commandLine(),
          String.format(
              "%s %s is no value for a lithium-ion cell; give one from %s to %s %s.",
              option, number, low, high, unit));
    }
  }
}
