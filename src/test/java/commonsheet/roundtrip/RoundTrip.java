package commonsheet.roundtrip;

import commonsheet.record.Curve;
import java.io.IOException;
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
    try {
      List<Curve> curves = reader.read(chart.sheet());
      return ChartResult.of(chart, curves, (System.nanoTime() - start) / 1e9, null);
    } catch (Exception fault) {
      return ChartResult.of(
          chart, List.of(), (System.nanoTime() - start) / 1e9, "failed: " + fault);
    }
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
