package commonsheet.compare.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.columns.ColumnException;
import commonsheet.compare.Load;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Loads worked by hand from logs of an invented survey boat. */
class LoadLogTest {
  @TempDir private Path folder;

  /** An hour at 13 A and six minutes at 30 A are 16 A·h in 1.1 h. */
  @Test
  void averageChargeAndSharesAreThoseOfTheTime() throws Exception {
    LoggedLoad load = read(log("time (s),current (A)\n", steps(13, 3600, 30, 360)));
    assertEquals(3960, load.duration(), 1e-9);
    assertEquals(16, load.charge(), 1e-9);
    assertEquals(16 / 1.1, load.load().averageCurrent(), 1e-9);
    assertEquals(30, load.load().peak(), 1e-9);
    assertEquals(2, load.load().shares().size());
    Load.Share cruise = load.load().shares().get(0);
    assertEquals(13, cruise.current(), 1e-9);
    assertEquals(3600.0 / 3960, cruise.time(), 1e-9);
    assertEquals(0, load.rest(), 1e-9);
  }

  @Test
  void samplesWeighByTheirTimeHoweverUneven() throws Exception {
    StringBuilder text = new StringBuilder("time (s),current (A)\n");
    for (int i = 0; i <= 600; i++) {
      text.append(i / 10.0).append(",10\n");
    }
    for (int t = 60; t <= 120; t += 6) {
      text.append(t).append(",20\n");
    }
    assertEquals(15, read(text.toString()).load().averageCurrent(), 1e-9);
  }

  /**
   * A triangle from 0 to 100 A and back in 4 s on top of 10 A: the second about its top has a mean
   * of 110 − 12.5 A, and the ten seconds about it 10 A and a tenth of its 200 A·s.
   */
  @Test
  void sustainedPeaksAreTheHighestMeansOverAnyWindow() throws Exception {
    LoggedLoad load =
        read("time (s),current (A)\n0,10\n29.5,10\n31.5,110\n33.5,10\n61,10\n90,10\n");
    assertEquals(97.5, load.peaks().get(0).current(), 1e-9);
    assertEquals(30, load.peaks().get(1).current(), 1e-9);
    assertEquals(10 + 200.0 / 60, load.peaks().get(2).current(), 1e-9);
    assertEquals(30, load.load().peak(), 1e-9);
  }

  /** Against the plain definition: the mean over every window on a fine grid. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void sustainedPeaksAgreeWithTheDefinition(long seed) {
    Random random = new Random(seed);
    CurrentSamples samples = new CurrentSamples();
    double time = 0;
    for (int i = 0; i < 120; i++) {
      samples.add(time, 30 * random.nextDouble());
      time += random.nextInt(4) == 0 ? 2.5 * random.nextDouble() : 1;
    }
    for (double window : new double[] {1, 10, 60}) {
      double found = SustainedPeak.of(Run.of(samples), window);
      double highest = 0;
      for (double start = 0; start + window <= samples.time(119); start += 0.01) {
        highest = Math.max(highest, mean(samples, start, start + window));
      }
      assertTrue(found >= highest - 1e-9, found + " below " + highest);
      assertEquals(highest, found, 0.02, "over " + window + " s");
    }
  }

  @Test
  void aWindowLongerThanTheLogHasNoPeak() throws Exception {
    LoggedLoad load = read("time (s),current (A)\n0,10\n30,10\n");
    assertEquals(10, load.peaks().get(1).current(), 1e-9);
    assertNull(load.peaks().get(2).current());
    holds(load, "A sample comes every 30 s; peaks shorter than that are not seen");
  }

  @ParameterizedTest
  @CsvSource({
    "'time (s),current (A)', 1",
    "'Test Time / s,Current / mA', 1000",
    "'test_time_second,current_ampere', -1",
    "'time_s,current_mA', 1000",
    "'Zeit / s;Strom / mA', 1000",
    "'time / s,battery current [A]', 1"
  })
  void columnsAreKnownByManyNames(String names, double factor) throws Exception {
    String rows = "0," + 10 * factor + "\n60," + 10 * factor + "\n";
    String divided = names.indexOf(';') < 0 ? rows : rows.replace(',', ';');
    assertEquals(10, read(names + "\n" + divided).load().averageCurrent(), 1e-9);
  }

  @Test
  void dayAndHourAreTimesToo() throws Exception {
    String rows = "2031-05-03T10:15:00+02:00,10\n2031-05-03T10:16:00+02:00,10\n";
    assertEquals(60, read("timestamp,current (A)\n" + rows).duration(), 1e-9);
    String day = "2031/05/03 23:59:30.5,10\n2031/05/04 00:00:30.5,10\n";
    assertEquals(60, read("timestamp,current (A)\n" + day).duration(), 1e-9);
    assertEquals(60, read("time,current (A)\n0:59:30,10\n1:00:30,10\n").duration(), 1e-9);
  }

  @Test
  void anyColumnCanBeChosen() throws Exception {
    String text = "uptime,load,current (A)\n0,10000,1\n60000,10000,1\n";
    LogChoice choice = new LogChoice("uptime / ms", "load / mA", null, null);
    LoggedLoad load = LoadLog.read(write(text), choice);
    assertEquals(60, load.duration(), 1e-9);
    assertEquals(10, load.load().averageCurrent(), 1e-9);
    refused(
        text,
        new LogChoice("uptime / ms", "nosuch", null, null),
        "among \"uptime / ms\", \"load\", \"current (A)\"; --current-column \"nosuch\" is none");
    refused(text, LogChoice.NONE, "there is no column for the time among");
    refused(text, new LogChoice("uptime / ms", "load", null, null), "does not say its unit");
  }

  @Test
  void whichSignIsADischargeIsToldByTheCharge() throws Exception {
    LoggedLoad minus = read("time (s),current (A)\n0,-10\n20,-10\n40,-10\n60,-10\n60,2\n70,2\n");
    assertEquals(LogChoice.Sign.NEGATIVE, minus.source().discharge());
    assertEquals(10, minus.peaks().get(1).current(), 1e-9);
    assertTrue(minus.returned() > 0);
    String both = "0,-10\n60,-10\n60,8\n120,8\n";
    refused("time (s),current (A)\n" + both, LogChoice.NONE, "say --discharge");
    LoggedLoad bdf = read("Test Time / s,Current / A\n" + both);
    assertEquals(LogChoice.Sign.NEGATIVE, bdf.source().discharge(), "as the format has it");
    LogChoice plus = new LogChoice(null, null, LogChoice.Sign.POSITIVE, null);
    LoggedLoad chosen = LoadLog.read(write("Test Time / s,Current / A\n" + both), plus);
    assertEquals(8, chosen.load().averageCurrent(), 1e-9);
  }

  @Test
  void whatTheChargerPutBackCorrectsTheSensor() throws Exception {
    String text = log("time (s),current (A)\n", steps(13, 3600, 30, 360));
    LoggedLoad load = LoadLog.read(write(text), new LogChoice(null, null, null, 16.8));
    assertEquals(1.05, load.correction().factor(), 1e-9);
    assertEquals(16, load.correction().logged(), 1e-9);
    assertEquals(16.8, load.charge(), 1e-9);
    assertEquals(31.5, load.load().peak(), 1e-9);
    holds(load, "All currents are multiplied by 1.05: the charger put back 16.8 Ah");
    refused(text, new LogChoice(null, null, null, 30.0), "no sensor is so far off");
    refused(text, new LogChoice(null, null, null, 1.0), "no sensor is so far off");
  }

  @Test
  void acrossAGapNothingIsKnown() throws Exception {
    StringBuilder text = new StringBuilder("time (s),current (A)\n");
    for (int t = 0; t <= 100; t++) {
      text.append(t).append(",10\n");
    }
    for (int t = 1100; t <= 1200; t++) {
      text.append(t).append(",20\n");
    }
    LoggedLoad load = read(text.toString());
    assertEquals(200, load.duration(), 1e-9);
    assertEquals(new LoggedLoad.Gaps(1, 1000, 1000), load.gaps());
    assertEquals(15, load.load().averageCurrent(), 1e-9);
    holds(load, "The log has a gap, of 1000 s in all");
  }

  @Test
  void restIsNoPartOfTheLoad() throws Exception {
    LoggedLoad load = read(log("time (s),current (A)\n", steps(0.1, 600, 20, 600)));
    assertEquals(600, load.rest(), 1e-9);
    assertEquals(20, load.load().averageCurrent(), 1e-9);
    holds(load, "50 % of the time less than 1 % of the peak is drawn");
  }

  @Test
  void linesWithoutACurrentArePassedOver() throws Exception {
    LoggedLoad load = read("time (s),current (A)\n0,10\n20,\n40,NaN\n60,10\n,10\n");
    assertEquals(10, load.load().averageCurrent(), 1e-9);
    holds(load, "3 lines have no time or no current");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "time (s),voltage (V)~0,3~9,3 | there is no column for the current",
        "a,b~0,3~9,3 | there is no column for the time",
        "time (s),current (A)~0,1~5,1 | shorter than 10 s",
        "time (s),current (A)~0,0~50,0 | no current flows",
        "time (s),current (A)~0,1~50,1~40,1 | line 4: the time goes back",
        "time (s),current (A)~0,1~50,much | \"much\" in column \"current (A)\" is no number",
        "time (s),current~0,1~50,1 | does not say its unit",
        "time,current (A)~0,1~50,1 | does not say its unit",
        "time,current (A)~2031-13-40 10:00:00,1~50,1 | is no time"
      })
  void whatIsNoLogIsToldInOneSentence(String text, String reason) throws IOException {
    refused(text.replace('~', '\n') + "\n", LogChoice.NONE, reason);
  }

  private static double mean(CurrentSamples samples, double from, double to) {
    Run run = Run.of(samples).get(0);
    return (run.cursor().charge(to) - run.cursor().charge(from)) * 3600 / (to - from);
  }

  /** A second of samples each, first one current and then the other. */
  private static double[] steps(double first, int seconds, double second, int more) {
    double[] currents = new double[seconds + more];
    for (int i = 0; i < currents.length; i++) {
      currents[i] = i < seconds ? first : second;
    }
    return currents;
  }

  private static String log(String names, double... currents) {
    StringBuilder text = new StringBuilder(names);
    for (int i = 0; i < currents.length; i++) {
      text.append(i).append(',').append(currents[i]).append('\n');
      text.append(i + 1).append(',').append(currents[i]).append('\n');
    }
    return text.toString();
  }

  private LoggedLoad read(String text) throws IOException, ColumnException {
    return LoadLog.read(write(text), LogChoice.NONE);
  }

  private Path write(String text) throws IOException {
    return Files.writeString(folder.resolve("boat.csv"), text);
  }

  private void refused(String text, LogChoice choice, String reason) throws IOException {
    Path log = write(text);
    String said = assertThrows(ColumnException.class, () -> LoadLog.read(log, choice)).getMessage();
    assertTrue(said.contains(reason), said);
    assertFalse(said.contains("\n"), said);
  }

  private static void holds(LoggedLoad load, String words) {
    assertTrue(
        load.notes().stream().anyMatch(note -> note.contains(words)), load.notes().toString());
  }
}
