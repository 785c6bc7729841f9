package commonsheet.cli;

import commonsheet.check.Checks;
import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.ReadRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.Severity;
import commonsheet.record.StoredRecord;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Holds records against the rules. */
@Command(
    name = "check",
    description = {
      "Checks records by rules of what a lithium-ion cell can be and a datasheet can say;"
          + " docs/check.md lists them. Several records are also compared with each other.",
      "Ends with status 7 where an error is found that nobody has accepted."
    },
    sortOptions = false)
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--format",
      description = "text: a line per finding. json: all findings as an array.",
      defaultValue = "text")
  private OutputFormat format;

  @Option(
      names = "--write",
      description = "Also store the findings in the records; accepted ones stay accepted.")
  private boolean write;

  @Parameters(
      arity = "1..*",
      paramLabel = "RECORD|FOLDER",
      description = "Record files, or folders to search for .json files.")
  private List<Path> arguments;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    RecordFiles files = RecordFiles.read(arguments, err);
    CheckReport report = new CheckReport(out, format);
    List<CellRecord> all = new ArrayList<>();
    boolean failed = false;
    for (ReadRecord read : files.records()) {
      CellRecord checked = Checks.standard().applied(read.record());
      report.record(read.file(), checked);
      all.add(checked);
      if (write && !checked.equals(read.record())) {
        try {
          StoredRecord stored = RecordStore.open(read.file());
          RecordStore.save(stored, Checks.standard().applied(stored.record()));
        } catch (RecordException unwritten) {
          err.println("commonsheet: " + unwritten.getMessage());
          failed = true;
        }
      }
    }
    Checks.between(all).forEach(report::between);
    report.end();
    err.flush();
    if (failed) {
      return ExitStatus.NOT_WRITTEN;
    }
    return report.hasOpenError() ? ExitStatus.FOUND : files.status();
  }

  static boolean isOpenError(Finding finding) {
    return finding.isOpen() && finding.severity() == Severity.ERROR;
  }
}
