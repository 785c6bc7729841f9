package commonsheet.compare.log;

import commonsheet.columns.ColumnException;
import commonsheet.columns.ColumnFile;
import commonsheet.compare.Load;
import commonsheet.quantity.PlainNumber;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The load of a machine from a log of its current. */
public final class LoadLog {
  /** In s: a start, what a cell's sheet calls a pulse, and what heats it. */
  private static final List<Double> WINDOWS = List.of(1.0, Pieces.LENGTH, 60.0);

  /** What is drawn below this share of the peak is rest: the electronics, or the sensor's zero. */
  private static final double REST = 0.01;

  /**
   * A sensor that is off by more than this factor is not off but wrong: common practice, no source.
   */
  private static final double FARTHEST_OFF = 1.5;

  private static final int DIGITS = 4;
  private static final double SECONDS_PER_HOUR = 3600;

  private final ColumnFile file;
  private final LogChoice choice;
  private final List<String> notes = new ArrayList<>();

  private LoadLog(ColumnFile file, LogChoice choice) {
    this.file = file;
    this.choice = choice;
  }

  /**
   * Reads a log: a text file with columns of time and current, told by their names or chosen. Time
   * weighs every moment, however uneven the samples are; the current is straight between samples,
   * except across gaps, of which nothing is known.
   *
   * @param path at most 256 MB and five million samples
   * @throws ColumnException where the file is no such log, its columns cannot be told, it is
   *     shorter than ten seconds, the direction of the current is not clear, or the charge put back
   *     does not fit it
   */
  public static LoggedLoad read(Path path, LogChoice choice) throws ColumnException {
    return new LoadLog(ColumnFile.of(path), choice).read();
  }

  private LoggedLoad read() throws ColumnException {
    LogColumns.Content content = LogColumns.read(file, choice);
    List<Run> runs = Run.of(content.samples());
    if (runs.stream().noneMatch(run -> run.duration() >= Pieces.LENGTH)) {
      throw file.wrong("the log is shorter than 10 s, too short for a load");
    }
    Direction direction = Direction.of(runs, content.currentColumn(), choice, file);
    notes.add(
        "A "
            + (direction.sign() == LogChoice.Sign.POSITIVE ? "positive" : "negative")
            + " current is a discharge, "
            + direction.why()
            + ".");
    LoggedLoad.Correction correction = correction(direction.factor() * Pieces.of(runs).charge());
    double factor = direction.factor() * (correction == null ? 1 : correction.factor());
    List<Run> drawn = Run.of(content.samples().times(factor));
    return found(content, direction, correction, drawn);
  }

  private LoggedLoad found(
      LogColumns.Content content,
      Direction direction,
      LoggedLoad.Correction correction,
      List<Run> runs)
      throws ColumnException {
    LoggedLoad.Gaps gaps = gaps(runs, correction != null);
    List<LoggedLoad.Peak> peaks = new ArrayList<>();
    for (double window : WINDOWS) {
      peaks.add(new LoggedLoad.Peak(window, SustainedPeak.of(runs, window)));
    }
    double peak = SustainedPeak.of(runs, Pieces.LENGTH);
    Pieces all = Pieces.of(runs);
    Pieces drawn = all.above(REST * peak);
    if (!(peak > 0) || drawn.all().isEmpty()) {
      throw file.wrong("nothing is drawn for as long as 10 s; check the columns and --discharge");
    }
    tell(content, drawn.seconds() / all.seconds());
    List<Histogram.Bin> bins = Histogram.of(drawn);
    List<Load.Share> shares = bins.stream().map(Histogram.Bin::share).toList();
    double highest = shares.get(shares.size() - 1).current();
    return new LoggedLoad(
        new LoggedLoad.Source(
            file.name(),
            file.sha256(),
            content.timeColumn().text(),
            content.currentColumn().text(),
            content.samples().size(),
            direction.sign()),
        new Load(shares, Math.max(peak, highest)),
        bins.stream()
            .map(b -> new LoggedLoad.Bin(b.low(), b.high(), b.share().current(), b.share().time()))
            .toList(),
        peaks,
        drawn.seconds(),
        drawn.charge(),
        returned(runs),
        all.seconds() - drawn.seconds(),
        gaps,
        correction,
        notes);
  }

  /** By what the charger put back over what was taken out: common practice, no source. */
  private LoggedLoad.Correction correction(double logged) throws ColumnException {
    if (choice.chargedBack() == null) {
      return null;
    }
    double factor = choice.chargedBack() / logged;
    if (!(factor <= FARTHEST_OFF && factor >= 1 / FARTHEST_OFF)) {
      throw file.wrong(
          "the charger put back "
              + number(choice.chargedBack())
              + " Ah, and the log took out "
              + number(logged)
              + " Ah: no sensor is so far off; check that the pack was full before and after, that"
              + " the log is whole, and the columns");
    }
    notes.add(
        "All currents are multiplied by "
            + number(factor)
            + ": the charger put back "
            + number(choice.chargedBack())
            + " Ah, and the log took out "
            + number(logged)
            + " Ah (common practice, no source).");
    return new LoggedLoad.Correction(choice.chargedBack(), logged, factor);
  }

  private LoggedLoad.Gaps gaps(List<Run> runs, boolean corrected) {
    double time = 0;
    double longest = 0;
    for (int i = 1; i < runs.size(); i++) {
      double gap = runs.get(i).start() - runs.get(i - 1).end();
      time += gap;
      longest = Math.max(longest, gap);
    }
    if (runs.size() > 1) {
      notes.add(
          "The log has "
              + (runs.size() == 2 ? "a gap" : runs.size() - 1 + " gaps")
              + ", of "
              + number(time)
              + " s in all; what flowed in that time is not known and left out"
              + (corrected ? ", which makes the factor too large by as much." : "."));
    }
    return new LoggedLoad.Gaps(Math.max(0, runs.size() - 1), time, longest);
  }

  private void tell(LogColumns.Content content, double underLoad) {
    if (content.skipped() > 0) {
      notes.add(content.skipped() + " lines have no time or no current and are passed over.");
    }
    double step = content.samples().middleStep();
    if (step > WINDOWS.get(0)) {
      notes.add(
          "A sample comes every "
              + number(step)
              + " s; peaks shorter than that are not seen, so that the real ones may be higher.");
    }
    if (underLoad < 1) {
      notes.add(
          number(100 * (1 - underLoad))
              + " % of the time less than 1 % of the peak is drawn; that is rest and no part of the"
              + " load.");
    }
  }

  /** What flowed against the discharge, in A.h. */
  private static double returned(List<Run> runs) {
    double charge = 0;
    for (Run run : runs) {
      for (int i = run.first() + 1; i <= run.last(); i++) {
        double seconds = run.samples().time(i) - run.samples().time(i - 1);
        double mean = (run.samples().current(i) + run.samples().current(i - 1)) / 2;
        charge += seconds * Math.max(0, -mean) / SECONDS_PER_HOUR;
      }
    }
    return charge;
  }

  private static String number(double value) {
    return PlainNumber.of(value, DIGITS);
  }
}
