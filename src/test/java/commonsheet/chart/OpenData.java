package commonsheet.chart;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Published measurements of real cells, copied with their licences into the test resources; each
 * folder's SOURCE.md says where they come from.
 */
public final class OpenData {
  private static final Path FOLDER = Path.of("src", "test", "resources", "opendata");

  /** What the files of the leaf cell call 1C, in A. */
  public static final double LEAF_RATE = 30.6;

  private OpenData() {}

  /**
   * A full discharge of the 18650 cell of slide_kokam (BSD-3-Clause), 2.7 V at its end: charge in
   * A.h and voltage in V.
   *
   * @param rate 0.2, 0.5, 1, 2 or 3
   */
  public static List<List<Double>> kokam(String rate) throws IOException {
    return pairs("slide_kokam/Characterisation_" + rate + "C_CC_discharge.csv", ",", 1);
  }

  /**
   * A full discharge of the 2.28 Ah pouch cell of pybamm_enertech (BSD-3-Clause), 3.0 V at its end;
   * the file has seconds, and the current is the rate times 2.28 A.
   *
   * @param rate 0.1 (every twentieth second of it), 0.5, 1 or 2
   */
  public static List<List<Double>> enertech(String rate) throws IOException {
    double perSecond = Double.parseDouble(rate) * 2.28 / 3600;
    String kept = rate.equals("0.1") ? "_every_20_s" : "";
    return pairs("pybamm_enertech/" + rate + "C_discharge_U" + kept + ".txt", "\t", perSecond);
  }

  /**
   * A full discharge of the 33.1 Ah laminate cell of nissan_leaf_ornl (MIT), 3.0 V at its end:
   * charge in A.h and voltage in V. The current is the rate times 30.6 A.
   *
   * @param rate 1, 2 or 3
   */
  public static List<List<Double>> leafDischarge(String rate) throws IOException {
    double perSecond = Double.parseDouble(rate) * LEAF_RATE / 3600;
    List<List<Double>> pairs = new ArrayList<>();
    for (String line : Files.readAllLines(leaf(rate))) {
      String[] cells = line.split(",", -1);
      if (cells[13].equals("DCHG")) {
        double time = Double.parseDouble(cells[7]);
        pairs.add(List.of(time * perSecond, Double.parseDouble(cells[9])));
      } else if (!pairs.isEmpty()) {
        break;
      }
    }
    return pairs;
  }

  /** The file of a cycler's log of nissan_leaf_ornl (MIT), without the line of names. */
  public static Path leaf(String rate) {
    return FOLDER.resolve("nissan_leaf_ornl").resolve(rate + "C-Discharge-Bitrode-data.csv");
  }

  private static List<List<Double>> pairs(String file, String between, double factor)
      throws IOException {
    List<List<Double>> pairs = new ArrayList<>();
    for (String line : Files.readAllLines(FOLDER.resolve(file))) {
      String[] cells = line.strip().split(between, -1);
      pairs.add(List.of(Double.parseDouble(cells[0]) * factor, Double.parseDouble(cells[1])));
    }
    return pairs;
  }
}
