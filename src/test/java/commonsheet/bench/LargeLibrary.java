package commonsheet.bench;

import commonsheet.compare.Condition;
import commonsheet.compare.Load;
import commonsheet.compare.Measure;
import commonsheet.compare.Requirement;
import commonsheet.compare.Shortlist;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Loads, compares and ranks a library of invented cells and prints how long it took, for a quarter,
 * a half and the whole of the number asked for. Run by {@code src/bench/library}; see
 * docs/benchmark.md.
 */
public final class LargeLibrary {
  private static final double NANOSECONDS = 1e9;
  private static final int PARTS = 4;

  /** Ranked so often in one program; the first time is that of a command. */
  private static final int TIMES = 3;

  private LargeLibrary() {}

  /** Folder for the records, which must be new or empty, and how many there are to be. */
  public static void main(String[] arguments) throws IOException, RecordException {
    Path folder = Path.of(arguments[0]);
    int number = Integer.parseInt(arguments[1]);
    List<Path> quarters = new ArrayList<>();
    for (int part = 0; part < PARTS; part++) {
      Path quarter = Files.createDirectories(folder.resolve("part-" + part));
      quarters.add(quarter);
      int from = part * number / PARTS;
      int to = (part + 1) * number / PARTS;
      IntStream.range(from, to).parallel().forEach(i -> InventedLibrary.write(quarter, i));
    }
    System.out.printf(
        Locale.ROOT, "%d records, %.0f kB each%n", number, size(folder) / 1e3 / number);
    for (int parts : List.of(1, 2, PARTS)) {
      List<CellRecord> records = load(quarters.subList(0, parts));
      rank(records);
    }
  }

  private static List<CellRecord> load(List<Path> folders) throws RecordException {
    long used = processorTime();
    long begin = System.nanoTime();
    List<CellRecord> records = new ArrayList<>();
    for (Path folder : folders) {
      records.addAll(new RecordStore(folder).readAll());
    }
    System.out.printf(
        Locale.ROOT,
        "%6d records loaded in %.2f s, %.2f s of processor time%n",
        records.size(),
        (System.nanoTime() - begin) / NANOSECONDS,
        (processorTime() - used) / NANOSECONDS);
    return records;
  }

  private static void rank(List<CellRecord> records) {
    Requirement asked = new Requirement(10, 25, 1, 4, 2, 2, 0.2, null);
    Condition condition = Condition.usual(Load.constant(10).sharedAmong(asked.sharing()));
    for (int time = 1; time <= TIMES; time++) {
      long used = processorTime();
      long begin = System.nanoTime();
      Shortlist list = Shortlist.of(records, condition, asked, Measure.DELIVERED_SPECIFIC_ENERGY);
      System.out.printf(
          Locale.ROOT,
          "%6d records compared and ranked in %.2f s, %.2f s of processor time; the first is %s%n",
          records.size(),
          (System.nanoTime() - begin) / NANOSECONDS,
          (processorTime() - used) / NANOSECONDS,
          list.contenders().get(0).cell().record().id());
    }
    System.gc();
    Runtime machine = Runtime.getRuntime();
    System.out.printf(
        Locale.ROOT,
        "%6d records held in %.0f MiB%n",
        records.size(),
        (machine.totalMemory() - machine.freeMemory()) / 1024.0 / 1024);
  }

  /** Of all threads, those that compile and those that collect garbage too, in ns. */
  private static long processorTime() {
    return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO).toNanos();
  }

  private static long size(Path folder) throws IOException {
    try (var files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).mapToLong(f -> f.toFile().length()).sum();
    }
  }
}
