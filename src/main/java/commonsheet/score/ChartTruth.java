package commonsheet.score;

import commonsheet.record.Conditions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * One chart of a sheet, as a careful person reads it: all its curves, each with a few points.
 *
 * @param page from 1
 * @param name what the chart is called in listings
 * @param kind as in the record, such as {@code discharge} or {@code cycle-life}
 */
public record ChartTruth(int page, String name, String kind, List<CurveTruth> curves) {
  /** How the names of chart truth files end. */
  public static final String SUFFIX = ".charts.csv";

  private static final String PDF = ".pdf";

  public ChartTruth {
    curves = List.copyOf(curves);
  }

  /**
   * The charts of a sheet: of {@code NAME.pdf} the file {@code NAME.charts.csv}, UTF-8 CSV with the
   * columns {@code page,chart,kind,x,xUnit,y,yUnit,curve,conditions,xSample,ySample,tolerance}.
   *
   * @param folder where the truths are
   * @param sheetFile file name of the sheet; a folder before it does not matter
   * @return null where the folder has no such file, so that nothing is known of the sheet's charts
   * @throws TruthException if the file cannot be read, or a row does not make sense
   */
  public static List<ChartTruth> forSheet(Path folder, String sheetFile) throws TruthException {
    String name = Path.of(sheetFile).getFileName().toString();
    if (name.toLowerCase(Locale.ROOT).endsWith(PDF)) {
      name = name.substring(0, name.length() - PDF.length());
    }
    Path file = folder.resolve(name + SUFFIX);
    return Files.exists(file) ? new ChartTruthReader(file).read() : null;
  }

  /**
   * The conditions that tell this chart's curves apart: those of a curve that not all curves have
   * with the same value.
   */
  Conditions own(CurveTruth curve) {
    Map<String, Double> own = new LinkedHashMap<>();
    curve
        .conditions()
        .values()
        .forEach(
            (name, value) -> {
              if (!curves.stream().allMatch(c -> Objects.equals(c.conditions().get(name), value))) {
                own.put(name, value);
              }
            });
    return new Conditions(own);
  }
}
