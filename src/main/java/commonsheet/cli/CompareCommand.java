package commonsheet.cli;

import commonsheet.compare.Condition;
import commonsheet.compare.Measure;
import commonsheet.compare.Shortlist;
import commonsheet.compare.Verdict;
import commonsheet.record.CellRecord;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Compares cells at one condition and tells which of them carry a load. */
@Command(
    name = "compare",
    description =
        "Compares cells at one condition: which carry the current, and what each delivers at it.",
    sortOptions = false)
final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private MachineOptions machine;

  @Option(
      names = "--cutoff",
      paramLabel = "VOLTAGE",
      converter = Given.Voltage.class,
      description =
          "To which voltage of a cell a discharge is followed; 3.0 V if not given, which the curves"
              + " of most cobalt, nickel and manganese cells reach. Give iron phosphate 2.5.")
  private double cutoff = Condition.USUAL_CUTOFF;

  @Option(
      names = "--temperature",
      paramLabel = "CELSIUS",
      converter = Given.Temperature.class,
      description = "Temperature of the surroundings; 23 °C if not given.")
  private double temperature = Condition.USUAL_TEMPERATURE;

  @Option(
      names = "--reserve",
      paramLabel = "SHARE",
      converter = Given.Share.class,
      description =
          "Share of the charge that is to stay in the cells, such as 20%%; 0 if not given.")
  private double reserve;

  @Option(
      names = "--rank-by",
      paramLabel = "MEASURE",
      converter = Given.ByLabel.class,
      description =
          "What cells of one verdict are ordered by; deliveredSpecificEnergy if not given.")
  private Measure measure = Measure.DELIVERED_SPECIFIC_ENERGY;

  @Option(names = "--approved-only", description = "Leave out records that nobody has approved.")
  private boolean approvedOnly;

  @Option(names = "--require", description = "End with status 6 where no cell carries the current.")
  private boolean require;

  @Option(
      names = "--format",
      description =
          "terminal, csv, json, markdown, html, xlsx, data-package or svg (the charts); by the"
              + " ending of --out when none is given, else terminal.")
  private ShortlistFormat format;

  @Option(
      names = "--out",
      paramLabel = "FILE|DIR",
      description =
          "Write the comparison to FILE instead of printing it; data-package and svg write several"
              + " files into DIR, or into one ending in .zip.")
  private Path file;

  @Option(
      names = "--licence",
      paramLabel = "NAME|ADDRESS",
      converter = Given.Licence.class,
      description =
          "The licence that a data package is passed on under, such as CC-BY-4.0; the package names"
              + " none if not given.")
  private String licence;

  @Parameters(
      arity = "1..*",
      paramLabel = "RECORD|FOLDER",
      description = "Record files, or folders to search for .json files.")
  private List<Path> arguments;

  @Override
  public Integer call() throws CommandException {
    ShortlistFormat form = format == null ? ShortlistFormat.of(file) : format;
    form.check(file);
    MachineOptions.Asked asked = machine.asked();
    Condition condition =
        new Condition(asked.load(), cutoff, temperature, reserve, Condition.Tolerance.STANDARD);
    PrintWriter err = spec.commandLine().getErr();
    RecordFiles files = RecordFiles.read(arguments, err);
    List<CellRecord> records = approvedOnly ? files.approved(err) : files.contents();
    if (records.isEmpty()) {
      return ExitStatus.NONE_READABLE;
    }
    Shortlist shortlist = Shortlist.of(records, condition, asked.requirement(), measure);
    form.give(shortlist, licence, file, spec.commandLine().getOut());
    boolean none = shortlist.contenders().stream().noneMatch(c -> c.verdict() == Verdict.CARRIES);
    return require && none ? ExitStatus.BELOW_MINIMUM : files.status();
  }
}
