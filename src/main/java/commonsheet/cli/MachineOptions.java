package commonsheet.cli;

import commonsheet.compare.GivenLoad;
import commonsheet.compare.Load;
import commonsheet.compare.Requirement;
import commonsheet.compare.log.LoadException;
import commonsheet.compare.log.LoadFile;
import commonsheet.quantity.PlainNumber;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** What is asked of the cells: a current on each, or what a machine draws from its packs. */
final class MachineOptions {
  private static final int DIGITS = 6;

  /** Ends with a share of the time. */
  private static final Pattern MIX = Pattern.compile(".*:\\s*[\\d.]+\\s*%?\\s*");

  @Option(
      names = "--current",
      paramLabel = "CURRENT",
      converter = Given.Current.class,
      description = "The current on each cell, such as 10A or 9500mA; or else, for a machine:")
  private Double current;

  @Option(
      names = "--average-current",
      paramLabel = "CURRENT",
      converter = Given.Current.class,
      description = "What the whole machine draws on average.")
  private Double average;

  @Option(
      names = "--peak-current",
      paramLabel = "CURRENT",
      converter = Given.Current.class,
      description = "The highest current it holds for some seconds; the average if not given.")
  private Double peak;

  @Option(
      names = "--load",
      paramLabel = "MIX|FILE",
      description =
          "In place of the two: a mix of currents with their shares of the time, such as"
              + " 13A:90%%,30A:10%%, or a file that the command load wrote.")
  private String load;

  @Option(names = "--packs", paramLabel = "N", description = "Packs in parallel, 1 if not given.")
  private Integer packs;

  @Option(
      names = "--series",
      paramLabel = "N",
      description = "Cells in series in a pack, 1 if not given.")
  private Integer series;

  @Option(
      names = "--parallel",
      paramLabel = "N",
      description = "Cells in parallel in a pack, 1 if not given.")
  private Integer parallel;

  @Option(
      names = "--factor",
      paramLabel = "NUMBER",
      description =
          "How many times the average current a cell must be rated for at least, 2 if not given"
              + " (common practice; a minimum). A higher peak counts instead.")
  private Double factor;

  @Option(
      names = "--cruise-speed",
      paramLabel = "SPEED",
      converter = Given.Speed.class,
      description = "Speed at the average current, such as 8km/h or 4kn, to tell the distance.")
  private Double speed;

  @Option(
      names = "--mass-allowance",
      paramLabel = "SHARE",
      converter = Given.Share.class,
      description = "What wiring and casing add to the mass of the bare cells, such as 15%%.")
  private Double allowance;

  /**
   * What is asked.
   *
   * @param load on one cell
   * @param requirement null where only a current on each cell was given
   */
  record Asked(Load load, Requirement requirement) {}

  Asked asked() throws CommandException {
    long given = Stream.of(current, average, load).filter(Objects::nonNull).count();
    if (given != 1) {
      throw wrong(
          (given == 0 ? "say what is asked" : "only one thing can be asked")
              + ": a current on each cell by --current, or what the machine draws by"
              + " --average-current or --load");
    }
    if (current != null) {
      refuseMachine();
      return new Asked(Load.constant(current), null);
    }
    Load whole = whole();
    Requirement requirement = requirement(whole);
    return new Asked(whole.sharedAmong(requirement.sharing()), requirement);
  }

  private void refuseMachine() throws CommandException {
    Map<String, Object> others = new LinkedHashMap<>();
    others.put("--peak-current", peak);
    others.put("--packs", packs);
    others.put("--series", series);
    others.put("--parallel", parallel);
    others.put("--factor", factor);
    others.put("--cruise-speed", speed);
    others.put("--mass-allowance", allowance);
    for (Map.Entry<String, Object> other : others.entrySet()) {
      if (other.getValue() != null) {
        throw wrong(
            "--current is the current on each cell, and "
                + other.getKey()
                + " belongs to a machine; give --average-current in place of --current");
      }
    }
  }

  /** What the whole machine draws. */
  private Load whole() throws CommandException {
    try {
      Load drawn = load == null ? Load.constant(average) : mixOrFile();
      if (peak == null) {
        return drawn;
      }
      // A log's own peak may be replaced by any that its histogram allows.
      double highest = new Load(drawn.shares()).peak();
      if (peak < highest) {
        throw wrong(
            "the peak current must not be below "
                + PlainNumber.of(highest, DIGITS)
                + " A, which the machine draws anyway; give a higher --peak-current or none");
      }
      return drawn.withPeak(peak);
    } catch (IllegalArgumentException wrong) {
      throw wrong(wrong.getMessage());
    }
  }

  private Load mixOrFile() throws CommandException {
    if (MIX.matcher(load).matches()) {
      return GivenLoad.parse(load);
    }
    Path file = file();
    if (file == null || !Files.exists(file)) {
      throw wrong("--load " + load + ": there is no such file; write a mix as 13A:90%,30A:10%");
    }
    try {
      return LoadFile.read(file);
    } catch (LoadException unusable) {
      throw wrong(unusable.getMessage());
    }
  }

  /** Null where the text cannot be the name of a file on this system. */
  private Path file() {
    try {
      return Path.of(load);
    } catch (InvalidPathException noName) {
      return null;
    }
  }

  private Requirement requirement(Load whole) throws CommandException {
    try {
      return new Requirement(
          whole.averageCurrent(),
          whole.peak(),
          packs == null ? 1 : packs,
          series == null ? 1 : series,
          parallel == null ? 1 : parallel,
          factor == null ? Requirement.USUAL_FACTOR : factor,
          allowance == null ? 0 : allowance,
          speed);
    } catch (IllegalArgumentException wrong) {
      throw wrong(wrong.getMessage());
    }
  }

  private static CommandException wrong(String sentence) {
    return new CommandException(ExitStatus.USAGE, sentence + (sentence.endsWith(".") ? "" : "."));
  }
}
