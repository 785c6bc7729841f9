package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two persons, programs or editors at one record file. */
class ConflictTest {
  private static final Statement MASS =
      Records.statement("s1", "mass", null, 48, "g", Conditions.NONE, 3);

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeARecord() throws RecordException {
    file = new RecordStore(folder).write(Records.with(MASS));
  }

  @Test
  void savesWhatNobodyElseChanged() throws Exception {
    StoredRecord first = RecordStore.open(file);
    StoredRecord second = RecordStore.save(first, confirmed(first.record()));
    assertEquals(second, RecordStore.open(file));
    RecordStore.save(second, first.record());
    assertEquals(first, RecordStore.open(file));
    assertEquals(List.of(file.getFileName().toString()), names());
  }

  @Test
  void tellsTheSecondOfTwoAndOverwritesNothing() throws Exception {
    StoredRecord mine = RecordStore.open(file);
    StoredRecord theirs = RecordStore.open(file);
    RecordStore.save(theirs, confirmed(theirs.record()));
    String saved = Files.readString(file);
    RecordConflictException told =
        assertThrows(
            RecordConflictException.class,
            () -> RecordStore.save(mine, mine.record().withStatements(List.of())));
    assertTrue(told.getMessage().contains("has been changed since it was read"));
    assertEquals(saved, Files.readString(file));
  }

  @Test
  void noticesATextEditor() throws Exception {
    StoredRecord mine = RecordStore.open(file);
    Files.writeString(file, Files.readString(file).replace("48", "47"));
    assertThrows(
        RecordConflictException.class, () -> RecordStore.save(mine, confirmed(mine.record())));
    Files.delete(file);
    assertThrows(
        RecordConflictException.class, () -> RecordStore.save(mine, confirmed(mine.record())));
    assertEquals(List.of(), names());
  }

  @Test
  void isNotStoppedByWhatAKilledProgramLeft() throws Exception {
    Files.writeString(folder.resolve(".tarn-cells-tc-26e.json.lock"), "-");
    Files.writeString(folder.resolve(".tarn-cells-tc-26e.json.1234.part"), "{half a rec");
    StoredRecord mine = RecordStore.open(file);
    RecordStore.save(mine, confirmed(mine.record()));
    assertEquals(1, new RecordStore(folder).readAll().size());
  }

  /** Programs that each add to the file many times, at once: nothing that one added is lost. */
  @Test
  void losesNothingBetweenPrograms() throws Exception {
    List<Process> programs = new ArrayList<>();
    int each = 15;
    for (String name : List.of("first", "second", "third")) {
      programs.add(
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  Adder.class.getName(),
                  file.toString(),
                  name,
                  String.valueOf(each))
              .inheritIO()
              .start());
    }
    for (Process program : programs) {
      assertTrue(program.waitFor(120, TimeUnit.SECONDS));
      assertEquals(0, program.exitValue());
    }
    assertEquals(3 * each, RecordStore.open(file).record().review().steps().size());
    assertEquals(List.of(file.getFileName().toString()), names());
  }

  /** A program that adds steps to a record, again where somebody was faster. */
  static final class Adder {
    private Adder() {}

    public static void main(String[] arguments) throws Exception {
      Path file = Path.of(arguments[0]);
      int left = Integer.parseInt(arguments[2]);
      while (left > 0) {
        StoredRecord before = RecordStore.open(file);
        ReviewStep step =
            new ReviewStep(
                ReviewStep.Kind.CONFIRMED,
                arguments[1],
                "2026-05-03T10:15:00Z",
                List.of("s1"),
                null,
                "no. " + left);
        try {
          RecordStore.save(before, before.record().with(before.record().review().with(step)));
          left--;
        } catch (RecordConflictException faster) {
          Thread.onSpinWait();
        }
      }
    }
  }

  private static CellRecord confirmed(CellRecord record) {
    return record.withStatements(
        record.statements().stream().map(s -> s.standing(Standing.CONFIRMED, null)).toList());
  }

  private List<String> names() throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }
}
