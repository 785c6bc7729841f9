package commonsheet.chart.text;

import java.util.List;

/** What a chart shows as a whole. */
public enum ChartKind {
  DISCHARGE("discharge"),
  CHARGE("charge"),
  CYCLE_LIFE("cycle-life"),
  CAPACITY_OVER_TEMPERATURE("capacity-over-temperature"),
  RESISTANCE_OVER_STATE_OF_CHARGE("resistance-over-state-of-charge"),
  PULSE("pulse"),
  OTHER("other");

  private final String label;

  ChartKind(String label) {
    this.label = label;
  }

  /** Its name in records. */
  public String label() {
    return label;
  }

  /** Which half of a cycle a rate on the chart's labels belongs to. */
  public Context context() {
    return this == CHARGE ? Context.CHARGE : Context.DISCHARGE;
  }

  /**
   * The kind by what the axes show, and where these leave it open by the title and by whether the
   * curves fall.
   *
   * @param x quantity of the x axis, or null
   * @param ys quantities of the y axes
   * @param title the heading and captions, or null
   * @param falling whether most curves end lower on the page than they begin
   */
  public static ChartKind of(String x, List<String> ys, String title, boolean falling) {
    String said = title == null ? "" : ChartText.lower(title);
    List<String> named =
        ChartWords.standard().kinds().find(said).stream().map(PhraseFinder.Found::meaning).toList();
    if (x == null) {
      return OTHER;
    }
    return switch (x) {
      case "capacity", "stateOfCharge", "depthOfDischarge", "energy" ->
          overCapacity(x, ys, named, falling);
      case "time" -> overTime(ys, named, falling);
      case "cycles" -> ys.isEmpty() ? OTHER : CYCLE_LIFE;
      case "temperature" -> ys.contains("capacity") ? CAPACITY_OVER_TEMPERATURE : OTHER;
      default -> OTHER;
    };
  }

  private static ChartKind overCapacity(
      String x, List<String> ys, List<String> named, boolean falling) {
    if (ys.contains("resistance")) {
      return x.equals("stateOfCharge") || x.equals("depthOfDischarge")
          ? RESISTANCE_OVER_STATE_OF_CHARGE
          : OTHER;
    }
    if (!ys.contains("voltage")) {
      return OTHER;
    }
    if (x.equals("stateOfCharge") && !named.contains("charge") && !named.contains("discharge")) {
      return OTHER;
    }
    boolean onlyCharge = named.contains("charge") && !named.contains("discharge");
    return onlyCharge || (!falling && !named.contains("discharge")) ? CHARGE : DISCHARGE;
  }

  private static ChartKind overTime(List<String> ys, List<String> named, boolean falling) {
    if (named.contains("pulse")) {
      return PULSE;
    }
    if (!ys.contains("voltage") && !ys.contains("current") && !ys.contains("capacity")) {
      return OTHER;
    }
    boolean charge = named.contains("charge");
    boolean discharge = named.contains("discharge");
    if (charge != discharge) {
      return charge ? CHARGE : DISCHARGE;
    }
    return ys.contains("voltage") && falling && ys.size() == 1 ? DISCHARGE : CHARGE;
  }
}
