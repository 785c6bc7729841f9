package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.compare.CellFigures;
import commonsheet.compare.Condition;
import commonsheet.compare.Contender;
import commonsheet.compare.DischargeFamily;
import commonsheet.compare.Figure;
import commonsheet.compare.Load;
import commonsheet.compare.Measure;
import commonsheet.compare.Requirement;
import commonsheet.compare.Shortlist;
import commonsheet.compare.Verdict;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * The survey boat (fixtures/story): what comes of eight sheets that are read as anybody would read
 * them. What cells deliver is held against the formula that drew their charts
 * (fixtures/sources/cells.py, story_truths.py).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StoryTest {
  private static final Path FIXTURES = Path.of("fixtures");
  private static final List<String> SHEETS =
      List.of(
          "harrowmere-hm18650-29e",
          "hoshinagi-hn18650-32",
          "ellerbeck-eb21700-48",
          "corrowmere-cm18650-30",
          "grellund-gl21700-40",
          "fennimarsh-fn21700-50",
          "wexmoor-wx18650-30",
          "tussockfell-tf26650-33");

  /** 13 A along the lines, 30 A against the wind: shares of the time of boat-log.csv, rounded. */
  private static final Load BOAT =
      new Load(List.of(new Load.Share(13, 0.85), new Load.Share(30, 0.15)));

  private static final double CUTOFF = 2.8;
  private static final double CHARTS_TEMPERATURE = 25;

  @TempDir private static Path folder;
  private List<CellRecord> records;

  @BeforeAll
  void read() throws Exception {
    List<String> command = new ArrayList<>(List.of("read", "--out", folder.toString()));
    SHEETS.forEach(name -> command.add(FIXTURES.resolve("sheets/" + name + ".pdf").toString()));
    Run run = Run.of(command.toArray(String[]::new));
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    records = new RecordStore(folder).readAll();
    assertEquals(SHEETS.size(), records.size());
  }

  private static Condition under(Load load) {
    return new Condition(load, CUTOFF, CHARTS_TEMPERATURE, 0, Condition.Tolerance.STANDARD);
  }

  /** A line of delivered.csv: model, load, cut-off, A·h, W·h, mean V. */
  private record Delivered(String model, Load load, double capacity, double energy, double mean) {
    static Delivered of(String line) {
      String[] parts = line.split(",");
      assertEquals(CUTOFF, Double.parseDouble(parts[2]));
      return new Delivered(
          parts[0],
          load(parts[1]),
          Double.parseDouble(parts[3]),
          Double.parseDouble(parts[4]),
          Double.parseDouble(parts[5]));
    }

    private static Load load(String text) {
      return new Load(
          Arrays.stream(text.split(";"))
              .map(share -> share.split(":"))
              .map(s -> new Load.Share(Double.parseDouble(s[0]), Double.parseDouble(s[1])))
              .toList());
    }
  }

  private static List<Delivered> truths() throws Exception {
    try (Stream<String> lines = Files.lines(FIXTURES.resolve("story/delivered.csv"))) {
      return lines.skip(1).map(Delivered::of).toList();
    }
  }

  private CellFigures figures(Delivered truth) {
    CellRecord record =
        records.stream()
            .filter(r -> truth.model().equals(r.cell().model()))
            .findFirst()
            .orElseThrow();
    return DischargeFamily.of(record, under(truth.load())).under(truth.load());
  }

  @Test
  void whatCellsDeliverIsWhatTheFormulaOfTheirChartsGives() throws Exception {
    int within = 0;
    List<String> outside = new ArrayList<>();
    for (Delivered truth : truths()) {
      CellFigures found = figures(truth);
      Figure capacity = found.figure(Measure.DELIVERED_CAPACITY);
      Figure energy = found.figure(Measure.DELIVERED_ENERGY);
      Figure mean = found.figure(Measure.MEAN_VOLTAGE);
      assertEquals(truth.capacity(), capacity.value(), 0.015 * truth.capacity(), truth::toString);
      assertEquals(truth.energy(), energy.value(), 0.015 * truth.energy(), truth::toString);
      assertEquals(truth.mean(), mean.value(), 0.015, truth::toString);
      for (var one :
          Map.of(capacity, truth.capacity(), energy, truth.energy(), mean, truth.mean())
              .entrySet()) {
        boolean holds =
            one.getKey().low() <= one.getValue() && one.getValue() <= one.getKey().high();
        within += holds ? 1 : 0;
        if (!holds) {
          outside.add(truth + " against " + one.getKey());
        }
      }
    }
    int all = within + outside.size();
    assertTrue(within >= 0.9 * all, () -> String.join("\n", outside));
    assertTrue(all > 60);
  }

  private Shortlist shortlist() {
    Requirement requirement = new Requirement(15.55, 30, 2, 4, 1, 2, 0.15, null);
    return Shortlist.of(
        records, under(BOAT.sharedAmong(2)), requirement, Measure.DELIVERED_SPECIFIC_ENERGY);
  }

  @Test
  void threeCellsCarryTheBoatAndOneNearlyDoes() {
    Map<String, Verdict> verdicts =
        shortlist().contenders().stream()
            .collect(
                Collectors.toMap(
                    c -> c.cell().record().cell().model(),
                    Contender::verdict,
                    (a, b) -> a,
                    TreeMap::new));
    assertEquals(
        Map.of(
            "GL21700-40", Verdict.CARRIES,
            "WX18650-30", Verdict.CARRIES,
            "TF26650-33", Verdict.CARRIES,
            "EB21700-48", Verdict.NEAR_MISS,
            "HN18650-32", Verdict.NOT_KNOWN,
            "FN21700-50", Verdict.FAILS,
            "CM18650-30", Verdict.FAILS,
            "HM18650-29E", Verdict.FAILS),
        verdicts);
  }

  @Test
  void theCellOfTheLargestPrintedCapacityIsNotTheChoice() {
    List<Contender> all = shortlist().contenders();
    Contender largest =
        all.stream()
            .max(
                Comparator.comparing(
                    c -> c.cell().figure(Measure.NOMINAL_CAPACITY).value(),
                    Comparator.nullsFirst(Comparator.naturalOrder())))
            .orElseThrow();
    assertEquals("FN21700-50", largest.cell().record().cell().model());
    assertEquals(Verdict.FAILS, largest.verdict());
    assertEquals(10 / 15.55 - 1, largest.margin(), 0.001);
    Contender first = all.get(0);
    assertEquals("GL21700-40", first.cell().record().cell().model());
    assertTrue(
        first.cell().figure(Measure.DELIVERED_SPECIFIC_ENERGY).value()
            > all.get(1).cell().figure(Measure.DELIVERED_SPECIFIC_ENERGY).value());
  }

  @Test
  void whatASheetDoesNotShowIsNotProlonged() {
    for (Contender contender : shortlist().contenders()) {
      Figure mean = contender.cell().figure(Measure.MEAN_VOLTAGE);
      assertEquals(
          contender.verdict() == Verdict.CARRIES, mean.isKnown(), contender.cell().toString());
    }
  }

  private static Run done(String... arguments) {
    Run run = Run.of(arguments);
    assertEquals(ExitStatus.DONE, run.status(), () -> String.join(" ", arguments) + run.err());
    return run;
  }

  /** What fixtures/story/run does after reading; continuous integration runs the script itself. */
  @Test
  void peopleApproveAndTheReportSaysWhatItRestsOn(@TempDir Path out) throws Exception {
    for (CellRecord record : records) {
      Path file = new RecordStore(out).write(record);
      List<String> confirm = new ArrayList<>(List.of("review", "confirm", file.toString()));
      Run open = done("review", "show", "--unsettled", "--ids", file.toString());
      confirm.addAll(List.of(open.out().trim().split("\\s+")));
      confirm.addAll(List.of("--by", "cell curator"));
      done(confirm.toArray(String[]::new));
      if (!"TF26650-33".equals(record.cell().model())) {
        done("review", "approve", file.toString(), "--by", "second reader");
      }
    }
    Run verified = done("verify", out.toString());
    assertTrue(verified.out().contains("7 approvals hold"), verified.out());
    String load = out.resolve("boat").toString();
    String log = FIXTURES.resolve("story/boat-log.csv").toString();
    Run drawn = done("load", log, "--charged-back", "11.66Ah", "--out", load);
    assertTrue(drawn.out().contains("0.9614"), "1 / 1.04, the sensor of boat_log.py");
    Path report = out.resolve("report.html");
    done(
        "compare",
        out.toString(),
        "--load",
        load,
        "--packs",
        "2",
        "--series",
        "4",
        "--cutoff",
        "2.8V",
        "--reserve",
        "20%",
        "--out",
        report.toString());
    String html = Files.readString(report);
    SHEETS.forEach(name -> assertTrue(html.contains(name + ".pdf"), name));
    assertTrue(html.contains("Caution"));
    assertTrue(html.contains("not approved"));
    assertTrue(html.indexOf("GL21700-40") < html.indexOf("FN21700-50"));
  }
}
