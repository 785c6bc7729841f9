package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Method;
import commonsheet.record.RecordStore;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole runs of {@code trace}, and of {@code read} and {@code explain} on a sheet with a chart. */
class TraceCommandTest {
  private static final String LOG =
      "Test Time / s,Current / A,Voltage / V\n0,-2.6,4.0\n1800,-2.6,3.5\n3300,-2.6,2.5\n";

  @TempDir private Path folder;
  private String sheet;
  private String records;

  @BeforeEach
  void drawn() throws IOException {
    sheet = ChartSheet.draw(folder.resolve("tw18650-26.pdf")).toString();
    records = folder.resolve("records").toString();
  }

  @Test
  void curvesComeIntoTheRecordAndAPictureBesideIt() throws Exception {
    Run run = Run.of("trace", "--out", records, sheet);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    holds(run, "page 1: discharge \"Discharge by rate at 25°C\", 3 curves\n");
    holds(run, "\"0.2C\" (dischargeCurrent 0.52, dischargeRate 0.2, ");
    holds(run, " — read\n");
    holds(run, "1 picture beside it");
    CellRecord record = only();
    List<Double> ends =
        record.curves().stream().map(c -> c.points().get(c.points().size() - 1).get(0)).toList();
    for (double end : List.of(2.6, 2.4, 2.2)) {
      assertTrue(ends.stream().anyMatch(e -> Math.abs(e - end) < 0.005), ends.toString());
    }
    Statement energy = derived(record, "energy", 1);
    assertEquals(2.5, energy.conditions().get(Conditions.CUTOFF_VOLTAGE));
    assertTrue(derived(record, "capacity", 0.2).evidence().from().get(0).startsWith("c"));
    holds(run, "note: Curve c");
    assertTrue(
        ImageIO.read(picture("-page-1-chart-1.png").toFile()).getWidth() > 600,
        "the chart and the list of its curves");
  }

  @Test
  void readDoesTheSameUnlessToldNotTo() throws Exception {
    Run traced = Run.of("trace", "--out", records, sheet);
    CellRecord byTrace = only();
    Run read = Run.of("read", "--out", records, sheet);
    assertEquals(ExitStatus.DONE, read.status(), read.err() + traced.err());
    assertEquals(byTrace, only());
    holds(read, "3 curves, ");
    holds(read, "1 picture of charts beside the record");
    Run without =
        Run.of("read", "--without-curves", "--out", folder.resolve("plain").toString(), sheet);
    assertFalse(without.out().contains("curves"), without.out());
    try (Stream<Path> files = Files.list(folder.resolve("plain"))) {
      assertEquals(1, files.count());
    }
  }

  @Test
  void explainTellsOfTheChart() {
    Run run = Run.of("explain", "--pictures", folder.resolve("pages").toString(), sheet);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    holds(run, "\nCharts\npage 1: discharge \"Discharge by rate at 25°C\", 3 curves\n");
  }

  @Test
  void whatIsInTheRecordAlreadyStays() throws Exception {
    Run.of("read", "--without-curves", "--out", records, sheet);
    CellRecord read = only();
    List<Statement> statements = new ArrayList<>(read.statements());
    statements.set(0, settled(statements.get(0)));
    CellRecord reviewed =
        new CellRecord(
            read.schema(),
            read.id(),
            read.cell(),
            read.source(),
            statements,
            read.curves(),
            read.findings(),
            read.review());
    new RecordStore(Path.of(records)).write(reviewed);
    Run run = Run.of("trace", "--out", records, "--page", "1", sheet);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    assertEquals(statements, only().statements().subList(0, statements.size()));
    assertEquals(3, only().curves().size());
    Run again = Run.of("read", "--out", records, sheet);
    assertEquals(ExitStatus.NOT_WRITTEN, again.status());
  }

  @Test
  void pointsAndLogsOfOnesOwnStandBesideTheSheetsAndSurviveReading() throws Exception {
    Path log = Files.writeString(folder.resolve("bench.csv"), LOG);
    Path points =
        Files.writeString(
            folder.resolve("points.csv"),
            "curve,capacity / mAh,voltage / V,dischargeRate\n3C,0,3.6,3\n3C,2100,2.5,\n");
    Run run =
        Run.of(
            "trace",
            "--out",
            records,
            "--measured",
            log.toString(),
            "--points",
            points.toString(),
            sheet);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    holds(run, "bench.csv: discharge\n  c5 \"bench\" (dischargeCurrent 2.6, cutoffVoltage 2.5)");
    assertEquals(ExitStatus.DONE, Run.of("read", "--out", records, sheet).status());
    List<Method> methods = only().curves().stream().map(Curve::method).toList();
    assertTrue(methods.containsAll(List.of(Method.HAND_PLACED, Method.MEASURED)));
    assertEquals(5, methods.size());
    assertTrue(
        only().statements().stream().noneMatch(s -> s.evidence().from().contains("c5")),
        "nothing is derived from what the user measured");
  }

  @Test
  void whatIsWrongIsSaidInOneSentence() throws IOException {
    Path log = Files.writeString(folder.resolve("bench.csv"), "a,b\n1,2\n");
    Run run = Run.of("trace", "--out", records, "--measured", log.toString(), sheet);
    assertEquals(ExitStatus.USAGE, run.status());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("bench.csv: there is no column for the time"), run.err());
    run = Run.of("trace", "--out", records, "--page", "2", sheet);
    assertEquals(ExitStatus.USAGE, run.status());
    assertTrue(run.err().contains("has pages 1 to 1, and no page 2"), run.err());
    run = Run.of("trace", "--out", records, folder.resolve("none.pdf").toString());
    assertEquals(ExitStatus.NONE_READABLE, run.status());
    assertFalse(Files.exists(Path.of(records)));
  }

  @Test
  void aSheetWithoutAChartIsNoFailure() {
    Run run =
        Run.of(
            "trace", "--out", records, "fixtures/sheets/tarnwick-tw18650-25n.pdf", "--page", "1");
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    holds(run, ", page 1: no chart was found\n");
  }

  private CellRecord only() throws Exception {
    List<CellRecord> all = new RecordStore(Path.of(records)).readAll();
    assertEquals(1, all.size());
    return all.get(0);
  }

  private Path picture(String ending) throws IOException {
    try (Stream<Path> files = Files.list(Path.of(records))) {
      return files.filter(f -> f.toString().endsWith(ending)).findFirst().orElseThrow();
    }
  }

  private static Statement derived(CellRecord record, String quantity, double rate) {
    return record.statements().stream()
        .filter(s -> s.quantity().equals(quantity) && s.evidence().method() == Method.DERIVED)
        .filter(s -> Double.valueOf(rate).equals(s.conditions().get(Conditions.DISCHARGE_RATE)))
        .findFirst()
        .orElseThrow();
  }

  private static Statement settled(Statement statement) {
    return new Statement(
        statement.id(),
        statement.quantity(),
        statement.statistic(),
        statement.value(),
        statement.low(),
        statement.high(),
        statement.unit(),
        statement.conditions(),
        statement.evidence(),
        Standing.CONFIRMED,
        List.of());
  }

  private static void holds(Run run, String words) {
    assertTrue(run.out().contains(words), run.out());
  }
}
