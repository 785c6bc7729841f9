package commonsheet.cli;

import commonsheet.api.RecordFolder;
import commonsheet.chart.derived.CurvesOfRecord;
import commonsheet.chart.derived.Tracing;
import commonsheet.chart.overlay.Figure;
import commonsheet.chart.points.MeasuredLog;
import commonsheet.chart.points.PlacedPoints;
import commonsheet.check.Checks;
import commonsheet.columns.ColumnException;
import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.RecordException;
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

/** Traces the curves of a sheet's charts into its record and draws them over the charts. */
@Command(
    name = "trace",
    description = {
      "Traces the curves of a datasheet's charts into its record, and draws each chart with its"
          + " curves laid over it.",
      "A record that is in the folder already keeps everything but its curves and what they give."
    },
    sortOptions = false)
final class TraceCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--page",
      paramLabel = "N",
      description = "Look at one page only, counted from 1; curves of other pages stay.")
  private Integer page;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder for the record and the pictures; ${DEFAULT-VALUE} when none is given.",
      defaultValue = "records")
  private Path folder;

  @Option(
      names = "--points",
      paramLabel = "FILE.csv",
      description = "Also add curves whose points were placed by hand; docs/points.md tells how.")
  private List<Path> points = List.of();

  @Option(
      names = "--measured",
      paramLabel = "LOG.csv",
      description = "Also add your own measured discharge; docs/points.md tells the columns.")
  private List<Path> logs = List.of();

  @Option(
      names = "--cell",
      paramLabel = "ID",
      description = "The record that --points and --measured belong to, on a sheet of several.")
  private String cell;

  @Option(
      names = "--layouts",
      paramLabel = "DIR",
      description = "Folder of your own layout rule files.")
  private Path layouts;

  @Mixin private Recognition recognition;

  @Parameters(paramLabel = "FILE", description = "The datasheet.")
  private Path file;

  @Override
  public Integer call() throws CommandException, InterruptedException {
    List<List<Curve>> own = own();
    SheetOutcome.Read read = sheet();
    RecordFolder records = new RecordFolder(folder);
    List<CellRecord> base =
        records.of(
            read.isPictures()
                ? List.of(Tracing.ofPictures(read.sheet()))
                : read.reading().records());
    TimedTracer.Outcome outcome =
        TimedTracer.by(recognition).charts(file, read.sheet(), base, page);
    if (outcome.problem() != null) {
      throw new CommandException(
          ExitStatus.NONE_READABLE,
          file + ": its charts were not read, because of " + outcome.problem());
    }
    List<CellRecord> traced = withOwn(Tracing.applied(base, outcome.charts(), page), own);
    PrintWriter out = spec.commandLine().getOut();
    for (CellRecord record : traced) {
      report(
          records,
          Checks.standard().applied(record),
          Figure.of(outcome.charts(), record.curves()),
          out);
    }
    out.flush();
    return ExitStatus.DONE;
  }

  /** The curves of the user's files, one list per file, read before anything that takes long. */
  private List<List<Curve>> own() throws CommandException {
    List<List<Curve>> own = new ArrayList<>();
    try {
      for (Path each : points) {
        own.add(PlacedPoints.read(each));
      }
      for (Path each : logs) {
        own.add(MeasuredLog.read(each));
      }
    } catch (ColumnException unusable) {
      throw new CommandException(ExitStatus.USAGE, unusable.getMessage());
    }
    return own;
  }

  private SheetOutcome.Read sheet() throws CommandException, InterruptedException {
    TimedReader reader =
        TimedReader.by(layouts, recognition, PageProgress.on(spec.commandLine().getErr()));
    Ahead.run(RecordValidator::prepare);
    SheetOutcome outcome = reader.read(file);
    if (outcome instanceof SheetOutcome.Failed failed) {
      throw new CommandException(ExitStatus.NONE_READABLE, failed.sentence());
    }
    SheetOutcome.Read read = (SheetOutcome.Read) outcome;
    if (read.reading().records().isEmpty() && !read.isPictures()) {
      throw new CommandException(ExitStatus.NONE_READABLE, file + ": " + read.reading().reason());
    }
    int pages = read.sheet().pages().size();
    if (page != null && (page < 1 || page > pages)) {
      throw new CommandException(
          ExitStatus.USAGE, file + " has pages 1 to " + pages + ", and no page " + page);
    }
    return read;
  }

  private List<CellRecord> withOwn(List<CellRecord> records, List<List<Curve>> own)
      throws CommandException {
    if (own.isEmpty()) {
      return records;
    }
    List<String> ids = records.stream().map(CellRecord::id).toList();
    if (cell == null && ids.size() > 1 || cell != null && !ids.contains(cell)) {
      throw new CommandException(
          ExitStatus.USAGE,
          "name the record that --points and --measured belong to by --cell; those of "
              + file
              + " are "
              + String.join(", ", ids));
    }
    List<CellRecord> result = new ArrayList<>();
    for (CellRecord record : records) {
      CellRecord more = record;
      for (List<Curve> curves : own) {
        more = cell == null || record.id().equals(cell) ? CurvesOfRecord.added(more, curves) : more;
      }
      result.add(more);
    }
    return result;
  }

  private void report(
      RecordFolder records, CellRecord record, List<Figure> figures, PrintWriter out)
      throws CommandException {
    RecordFolder.Written written;
    try {
      written = records.write(record);
    } catch (RecordException refused) {
      throw new CommandException(ExitStatus.NOT_WRITTEN, refused.getMessage());
    }
    ChartLines lines = new ChartLines(out);
    figures.forEach(lines::print);
    lines.printOwn(record);
    lines.printFindings(record);
    if (figures.isEmpty()) {
      out.println(file + (page == null ? "" : ", page " + page) + ": no chart was found");
    }
    int pictures = ChartPictures.draw(file, written.record(), figures, folder, page);
    out.println(
        file
            + ": "
            + SheetLine.of(record)
            + " → "
            + written.file()
            + (pictures == 0 ? "" : " and " + SheetLine.count(pictures, "picture") + " beside it"));
  }
}
