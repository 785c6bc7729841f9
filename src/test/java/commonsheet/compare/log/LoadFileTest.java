package commonsheet.compare.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import commonsheet.compare.Load;
import commonsheet.record.IndependentValidator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadFileTest {
  @TempDir private Path folder;

  @Test
  void aLoadComesBackAsItWasWritten() throws Exception {
    LoggedLoad found = LoadLog.read(Path.of("fixtures/story/boat-log.csv"), LogChoice.NONE);
    Load back = LoadFile.read(write(LoadFile.write(found)));
    assertEquals(found.load().peak(), back.peak(), 1e-4);
    assertEquals(found.load().averageCurrent(), back.averageCurrent(), 1e-4);
    assertEquals(found.load().shares().size(), back.shares().size());
  }

  /** By ajv, another implementation of JSON Schema. */
  @Test
  void anIndependentValidatorAccepts() throws Exception {
    assumeTrue(IndependentValidator.whyUnavailable().isEmpty(), "ajv is not at hand");
    LogChoice choice = new LogChoice(null, null, null, 11.66);
    Path corrected =
        write(LoadFile.write(LoadLog.read(Path.of("fixtures/story/boat-log.csv"), choice)));
    List<IndependentValidator.Verdict> verdicts =
        IndependentValidator.verdicts(Path.of("schemas/load.schema.json"), List.of(corrected));
    assertTrue(verdicts.get(0).valid(), verdicts.toString());
  }

  @Test
  void threeMembersAreEnoughForAFileByHand() throws Exception {
    Load load =
        LoadFile.read(
            write(
                "{\"schema\": \"commonsheet/load/1\", \"peakCurrent\": 40, \"shares\":"
                    + " [{\"current\": 13, \"time\": 0.9}, {\"current\": 30, \"time\": 0.1}]}"));
    assertEquals(40, load.peak());
    assertEquals(14.7, load.averageCurrent(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "time (s) | is not readable as JSON",
        "[1] | is no load",
        "{'schema': 'commonsheet/load/1'} | is missing",
        "{'schema': 'commonsheet/load/1', 'peakCurrent': 1, 'shares': [{'current': 2, 'time': 1}]}"
            + " | the peak of a load is at least",
        "{'schema': 'commonsheet/load/1', 'peakCurrent': 2, 'shares': [{'current': 2, 'time': .5}]}"
            + " | is not readable",
        "{'schema': 'commonsheet/load/1', 'peakCurrent': 2, 'shares': [{'current': 2, 'time':"
            + " 0.5}]} | must add up to 1",
        "{'schema': 'commonsheet/load/1', 'peakCurrent': 2, 'shares': [{'current': -2, 'time': 1}]}"
            + " | /shares/0/current: must be at least 0",
        "{'schema': 'commonsheet/load/1', 'peakCurrent': 2, 'peakCurrent': 2} | is not readable"
      })
  void whatIsNoLoadIsToldInOneSentence(String text, String reason) throws IOException {
    Path file = write(text.replace('\'', '"'));
    String said = assertThrows(LoadException.class, () -> LoadFile.read(file)).getMessage();
    assertTrue(said.contains(reason), said);
    assertTrue(said.startsWith(file.toString()), said);
  }

  private Path write(String text) throws IOException {
    return Files.writeString(folder.resolve("load.json"), text);
  }
}
