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
   *     right
   */
  public static void main(String[] arguments) throws IOException {
    boolean details = arguments.length > 0 && arguments[0].equals("--details");
    List<DrawnChart> charts = new ArrayList<>();
    for (int i = details ? 1 : 0; i < arguments.length; i++) {
      charts.addAll(DrawnChart.of(Path.of(arguments[i])));
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
