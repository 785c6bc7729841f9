package commonsheet.bench;

import commonsheet.layout.LayoutException;
import commonsheet.layout.LayoutLibrary;
import commonsheet.layout.Reading;
import commonsheet.layout.RecordReader;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetReader;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How many pages a second a running program reads, from the file to the records. Run by {@code
 * src/bench/warm}, with the options of the launcher; see docs/benchmark.md.
 */
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(
    value = 1,
    jvmArgsAppend = {"-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx1g", "-Xmn96m"})
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@State(Scope.Benchmark)
public class WarmRead {
  @Param("fixtures/sheets/tarnwick-tw18650-25n.pdf")
  private String sheet;

  private Path file;
  private RecordReader reader;

  /** Pages read; JMH prints them per second. */
  @AuxCounters
  @State(Scope.Thread)
  public static class Count {
    private long pages;

    /** JMH counts per iteration. */
    @Setup(Level.Iteration)
    public void startAgain() {
      pages = 0;
    }

    /** Named as JMH prints it. */
    public long pages() {
      return pages;
    }
  }

  @Setup
  public void load() throws LayoutException {
    file = Path.of(sheet);
    reader = new RecordReader(LayoutLibrary.load(null));
  }

  @Benchmark
  public Reading read(Count count) throws SheetException {
    Sheet words = SheetReader.read(file);
    count.pages += words.pages().size();
    return reader.read(words);
  }
}
