package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.record.Standing;
import commonsheet.score.ChartScore;
import commonsheet.score.ChartScorer;
import commonsheet.score.ChartTruth;
import commonsheet.score.ScoreReport;
import commonsheet.score.Scorer;
import commonsheet.score.SheetScore;
import commonsheet.score.Tally;
import commonsheet.score.Truth;
import commonsheet.score.TruthException;
import commonsheet.score.Truths;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads sheets and scores what was read against checked truths. */
@Command(
    name = "score",
    description = "Reads datasheets and scores what was read against checked truths.",
    sortOptions = false)
final class ScoreCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--truth",
      paramLabel = "DIR",
      required = true,
      description = "Folder of the truths: NAME.truth.csv, and NAME.charts.csv, for NAME.pdf.")
  private Path truths;

  @Option(
      names = "--details",
      description = "Also list every wrong, missed and spurious statement.")
  private boolean details;

  @Option(
      names = "--format",
      description = "text or json; ${DEFAULT-VALUE} when none is given.",
      defaultValue = "text")
  private OutputFormat format;

  @Option(
      names = "--minimum-recall",
      paramLabel = "SHARE",
      description =
          "End with status 6 where the recall of all sheets together is below it, 0 to 1.",
      defaultValue = "0")
  private double minimumRecall;

  @Option(
      names = "--minimum-precision",
      paramLabel = "SHARE",
      description =
          "End with status 6 where the precision of the statements that stand as read is below it,"
              + " 0 to 1.",
      defaultValue = "0")
  private double minimumPrecision;

  @Option(
      names = "--layouts",
      paramLabel = "DIR",
      description = "Folder of your own layout rule files.")
  private Path layouts;

  @Mixin private Recognition recognition;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE|FOLDER",
      description = "Datasheets, or folders to search for .pdf files.")
  private List<Path> arguments;

  @Override
  public Integer call() throws CommandException, InterruptedException {
    TimedReader reader =
        TimedReader.by(layouts, recognition, PageProgress.on(spec.commandLine().getErr()));
    TimedReader tracing = reader.tracing(TimedTracer.by(recognition));
    InputFiles inputs = InputFiles.find(arguments, ".pdf");
    inputs.problems().forEach(this::complain);
    int failed = inputs.problems().size();
    List<SheetScore> scores = new ArrayList<>();
    List<ChartScore> charts = new ArrayList<>();
    Progress progress =
        new Progress(spec.commandLine().getErr(), inputs.files().size(), System::nanoTime);
    for (Path file : inputs.files()) {
      List<Truth> expected = truths(file);
      if (expected.isEmpty()) {
        complain(file + ": there is no truth for it in " + truths);
        failed++;
      } else {
        List<ChartTruth> expectedCharts = charts(file);
        List<CellRecord> records = records((expectedCharts == null ? reader : tracing).read(file));
        scores.addAll(Scorer.scoreSheet(expected, records));
        if (expectedCharts != null) {
          charts.add(ChartScorer.scoreSheet(sheetName(file), expectedCharts, records));
        }
      }
      progress.step();
    }
    if (scores.isEmpty()) {
      return ExitStatus.NONE_READABLE;
    }
    ScoreReport report = new ScoreReport(scores, charts);
    print(report);
    return isBelowMinimum(report.total())
        ? ExitStatus.BELOW_MINIMUM
        : ExitStatus.of(scores.size(), failed);
  }

  private List<Truth> truths(Path sheet) throws CommandException {
    try {
      return Truths.forSheet(truths, sheet.getFileName().toString());
    } catch (TruthException unusable) {
      throw new CommandException(ExitStatus.USAGE, unusable.getMessage());
    }
  }

  /** The truth of a sheet's charts, or null where there is none. */
  private List<ChartTruth> charts(Path sheet) throws CommandException {
    try {
      return ChartTruth.forSheet(truths, sheet.getFileName().toString());
    } catch (TruthException unusable) {
      throw new CommandException(ExitStatus.USAGE, unusable.getMessage());
    }
  }

  private static String sheetName(Path sheet) {
    return sheet.getFileName().toString().replaceFirst("(?i)[.]pdf$", "");
  }

  /** The records of a sheet; a sheet that cannot be read has none, and misses all of its truth. */
  private List<CellRecord> records(SheetOutcome outcome) {
    if (outcome instanceof SheetOutcome.Failed failed) {
      complain(failed.sentence());
      return List.of();
    }
    return ((SheetOutcome.Read) outcome).reading().records();
  }

  private void print(ScoreReport report) {
    PrintWriter out = spec.commandLine().getOut();
    if (format == OutputFormat.JSON) {
      out.print(report.json());
    } else {
      out.print(report.table());
      if (details) {
        out.println();
        out.print(report.listing());
      }
    }
    out.flush();
  }

  private boolean isBelowMinimum(Tally total) {
    double recall = total.recall().orElse(1);
    double precision = total.of(Standing.READ).ratio().orElse(1);
    boolean below = false;
    if (recall < minimumRecall) {
      complain(below("recall", recall, minimumRecall));
      below = true;
    }
    if (precision < minimumPrecision) {
      complain(below("precision of what stands as read", precision, minimumPrecision));
      below = true;
    }
    return below;
  }

  private static String below(String what, double is, double minimum) {
    return String.format(
        Locale.ROOT, "the %s is %.4f, below the minimum of %.4f", what, is, minimum);
  }

  private void complain(String sentence) {
    PrintWriter err = spec.commandLine().getErr();
    err.println("commonsheet: " + sentence);
    err.flush();
  }
}
