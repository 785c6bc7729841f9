package commonsheet.export;

import commonsheet.compare.Measure;
import java.util.ArrayList;
import java.util.List;

/** How a column of a measure is headed. */
public final class MeasureHead {
  /** A column of numbers needs no more. */
  private static final int WIDEST = 10;

  private MeasureHead() {}

  /** The title in short lines, the unit in the last. */
  static List<String> lines(Measure measure) {
    return lines(measure.title(), unit(measure.unit()));
  }

  static List<String> lines(String title, String unit) {
    List<String> lines = new ArrayList<>(Wrapping.wrap(title, WIDEST));
    lines.add(unit);
    return lines;
  }

  /** A UCUM code as people write it, such as {@code Wh/kg} for {@code W.h/kg}. */
  public static String unit(String ucum) {
    return ucum.replace(".", "").replace("mOhm", "mΩ").replace("Cel", "°C");
  }
}
