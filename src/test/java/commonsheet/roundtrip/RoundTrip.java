package commonsheet.roundtrip;

import com.sun.management.OperatingSystemMXBean;
import commonsheet.record.Curve;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads drawn charts back and measures how well; see docs/benchmark.md. */
final class RoundTrip {
  /** Charts read before the clock counts, so that it does not measure the loading of classes. */
  private static final int WARM_UP = 3;

  /** Whatever gives the curves of a sheet. */
  interface CurveReader {
    List<Curve> read(Path sheet) throws Exception;
  }

  private RoundTrip() {}

  static List<ChartResult> run(List<DrawnChart> charts, CurveReader reader) {
    charts.stream().limit(WARM_UP).forEach(chart -> read(chart, reader));
    return charts.stream().map(chart -> read(chart, reader)).toList();
  }

  /** A chart that makes the reader fail counts as not found, with the reason. */
  private static ChartResult read(DrawnChart chart, CurveReader reader) {
    long start = System.nanoTime();
    long busy = processorTime();
    List<Curve> curves = List.of();
    String failure = null;
    try {
      curves = reader.read(chart.sheet());
    } catch (Exception fault) {
      failure = "failed: " + fault;
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    return ChartResult.of(chart, curves, seconds, (processorTime() - busy) / 1e9, failure);
  }

  /** Of the whole process, in nanoseconds: what other work on the machine does not lengthen. */
  private static long processorTime() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  /**
   * Prints the figures of one or more folders.
   *
   * @param arguments folders; before them {@code --details} for every chart that is not wholly
   *     right, {@code --every N} for each N-th chart of a folder only
   */
  public static void main(String[] arguments) throws IOException {
    List<String> rest = new ArrayList<>(List.of(arguments));
    boolean details = rest.remove("--details");
    int every = 1;
    int at = rest.indexOf("--every");
    if (at >= 0) {
      every = Integer.parseInt(rest.get(at + 1));
      rest.subList(at, at + 2).clear();
    }
    List<DrawnChart> charts = new ArrayList<>();
    for (String folder : rest) {
      List<DrawnChart> all = DrawnChart.of(Path.of(folder));
      for (int i = 0; i < all.size(); i += every) {
        charts.add(all.get(i));
      }
    }
    try (SheetCurves curves = new SheetCurves()) {
      List<ChartResult> results = run(charts, curves::read);
      System.out.print(RoundTripTable.text(results));
      if (details) {
        System.out.print("\nNot wholly right\n" + RoundTripTable.worst(results));
        System.out.print("\nFarthest from the data\n" + RoundTripTable.coarse(results, 25));
      }
    }
  }
}
