package commonsheet.cli;

import commonsheet.api.RecordFolder;
import commonsheet.chart.overlay.Figure;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.sheet.PageKind;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads a batch of sheets, hands on what it reads and counts. One bad sheet ends nothing. */
final class ReadRun {
  private final TimedReader reader;
  private final RecordFolder folder;
  private final ReadReport report;
  private final Consumer<CellRecord> kept;
  private final PrintWriter err;

  /**
   * Prepares a run.
   *
   * @param folder where records are written, or null to write none
   * @param kept is given every record that was read
   */
  ReadRun(
      TimedReader reader,
      RecordFolder folder,
      ReadReport report,
      Consumer<CellRecord> kept,
      PrintWriter err) {
    this.reader = reader;
    this.folder = folder;
    this.report = report;
    this.kept = kept;
    this.err = err;
  }

  /** Reads the files in turn. */
  ReadCounts read(InputFiles inputs) throws InterruptedException {
    inputs.problems().forEach(this::complain);
    ReadCounts counts = ReadCounts.NONE.withUnreadable(inputs.problems().size());
    Progress progress = new Progress(err, inputs.files().size(), System::nanoTime);
    for (Path file : inputs.files()) {
      counts = read(file, counts);
      progress.step();
    }
    return counts;
  }

  private ReadCounts read(Path file, ReadCounts before) throws InterruptedException {
    SheetOutcome outcome = reader.read(file);
    if (outcome instanceof SheetOutcome.Failed failed) {
      complain(failed.sentence());
      return before.withUnreadable(1);
    }
    SheetOutcome.Read read = (SheetOutcome.Read) outcome;
    List<CellRecord> records = read.reading().records();
    List<ReadReport.Written> written = new ArrayList<>();
    ReadCounts counts = before;
    for (CellRecord record : records) {
      try {
        ReadReport.Written whole =
            folder == null ? new ReadReport.Written(record, null) : stored(record);
        written.add(whole);
        kept.accept(whole.record());
      } catch (RecordException unwritten) {
        complain(unwritten.getMessage());
        counts = counts.withUnwritten();
      }
    }
    List<String> remarks = remarks(read);
    pictures(file, read, written).ifPresent(remarks::add);
    report.sheet(file, written, remarks);
    if (records.isEmpty()) {
      complain(file + ": " + read.reading().reason());
      return read.isPictures() ? counts.withPicture() : counts.withUnreadable(1);
    }
    return counts.withSheet(written.size());
  }

  private ReadReport.Written stored(CellRecord record) throws RecordException {
    RecordFolder.Written written = folder.write(record);
    return new ReadReport.Written(written.record(), written.file());
  }

  /** Draws the charts beside the records; says how many pictures, or why there are none. */
  private static Optional<String> pictures(
      Path file, SheetOutcome.Read read, List<ReadReport.Written> written) {
    int drawn = 0;
    for (ReadReport.Written each : written) {
      if (each.file() != null && !read.charts().isEmpty()) {
        try {
          List<Figure> figures = Figure.of(read.charts(), each.record().curves());
          drawn += ChartPictures.draw(file, each.record(), figures, each.file().getParent(), null);
        } catch (CommandException undrawn) {
          return Optional.of(undrawn.getMessage());
        }
      }
    }
    return drawn == 0
        ? Optional.empty()
        : Optional.of(SheetLine.count(drawn, "picture") + " of charts beside the record");
  }

  private static List<String> remarks(SheetOutcome.Read read) {
    List<String> remarks = new ArrayList<>();
    List<Integer> pictures = read.pages(PageKind.PICTURE);
    if (!pictures.isEmpty()) {
      remarks.add(SheetLine.pictures(pictures));
    }
    if (read.untraced() != null) {
      remarks.add("its charts were not read, because of " + read.untraced());
    }
    return remarks;
  }

  private void complain(String sentence) {
    err.println("commonsheet: " + sentence);
    err.flush();
  }
}
