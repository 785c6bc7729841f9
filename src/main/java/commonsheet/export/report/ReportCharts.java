package commonsheet.export.report;

import commonsheet.compare.DischargeLine;
import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.export.Caution;
import commonsheet.export.ShortlistWords;
import commonsheet.export.Wrapping;
import commonsheet.export.plot.Look;
import commonsheet.export.plot.Plot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The charts of a report: discharges overlaid at true scale, energy over current, capacity over
 * rating. They show the best cells that there is something to show of, no more than can be told
 * apart.
 */
final class ReportCharts {
  /** Characters in a line below a chart. */
  private static final int NOTE_WIDTH = 98;

  private final Report report;
  private final Map<ReportedCell, Look> looks = new LinkedHashMap<>();

  ReportCharts(Report report) {
    this.report = report;
    report.cells().stream()
        .filter(ReportCharts::isShown)
        .limit(Look.values().length)
        .forEach(cell -> looks.put(cell, Look.values()[looks.size()]));
  }

  /** What tells a cell from the others in all charts; nothing for one that is not shown. */
  Optional<Look> look(ReportedCell cell) {
    return Optional.ofNullable(looks.get(cell));
  }

  /** The charts that have something to show. */
  List<Plot> plots() {
    return Stream.of(discharges(), energies(), capacities())
        .filter(plot -> !plot.series().isEmpty())
        .toList();
  }

  /** The same as they stand alone, with condition, sources and caution below. */
  List<Plot> files() {
    return plots().stream().map(plot -> plot.noted(notes(plot))).toList();
  }

  private static boolean isShown(ReportedCell cell) {
    return !cell.discharges().isEmpty() || point(cell).isPresent();
  }

  private Plot discharges() {
    List<Plot.Series> series = new ArrayList<>();
    looks.forEach(
        (cell, look) ->
            nearest(cell)
                .ifPresent(
                    line ->
                        series.add(
                            new Plot.Series(
                                cell.rank(),
                                look,
                                cell.shortName() + ", " + ConditionWords.amperes(line.current()),
                                points(line),
                                Marks.along(points(line), series.size()),
                                line.unsure()))));
    return plot(
        "discharge-curves",
        "Discharge curves nearest to the load",
        "Voltage over the charge given, at true scale. Of each cell the digitised curve whose"
            + " current is nearest to "
            + ConditionWords.amperes(average())
            + ", with its current.",
        new String[] {"Charge given, Ah", "Voltage, V"},
        series,
        List.of());
  }

  private Plot energies() {
    List<Plot.Series> series = new ArrayList<>();
    looks.forEach(
        (cell, look) -> {
          List<Delivered> given =
              cell.delivered().stream().filter(d -> d.energy().isKnown()).toList();
          if (!given.isEmpty()) {
            series.add(
                new Plot.Series(
                    cell.rank(),
                    look,
                    cell.shortName(),
                    given.stream().map(ReportCharts::energy).toList(),
                    given.stream().filter(Delivered::digitised).map(ReportCharts::energy).toList(),
                    given.stream().anyMatch(d -> d.energy().unsure())));
          }
        });
    return plot(
        "energy-over-current",
        "Delivered energy over current",
        "Energy given at a constant current, to "
            + ConditionWords.number(report.condition().cutoffVoltage())
            + " V. Marks are digitised curves; lines reach only as far as the sheets show.",
        new String[] {"Current per cell, A", "Delivered energy, Wh"},
        series,
        loads());
  }

  /** The average and, where it is higher, the peak. */
  private List<Plot.Guide> loads() {
    double peak = report.condition().load().peak();
    Plot.Guide mean = new Plot.Guide(average(), "load " + ConditionWords.amperes(average()));
    return peak > average()
        ? List.of(mean, new Plot.Guide(peak, "peak " + ConditionWords.amperes(peak)))
        : List.of(mean);
  }

  private Plot capacities() {
    List<Plot.Series> series = new ArrayList<>();
    looks.forEach(
        (cell, look) ->
            point(cell)
                .ifPresent(
                    point ->
                        series.add(
                            new Plot.Series(
                                cell.rank(),
                                look,
                                cell.shortName(),
                                List.of(),
                                List.of(point),
                                cell.figure(Measure.DELIVERED_CAPACITY).unsure()
                                    || cell.figure(Measure.CURRENT_RATING).unsure()))));
    return plot(
        "capacity-over-rating",
        "Delivered capacity over current rating",
        "Charge given under the load, over the continuous current that each sheet allows. Right of"
            + " the line, cells carry the current."
            + withoutPoint(),
        new String[] {"Current rating, A", "Delivered capacity, Ah"},
        series,
        List.of(
            new Plot.Guide(
                report.ratingAsked(), "asked " + ConditionWords.amperes(report.ratingAsked()))));
  }

  private Plot plot(
      String id,
      String title,
      String description,
      String[] axes,
      List<Plot.Series> series,
      List<Plot.Guide> guides) {
    List<Plot.Point> points =
        series.stream().flatMap(s -> Stream.concat(s.line().stream(), s.marks().stream())).toList();
    double right =
        Stream.concat(points.stream().map(Plot.Point::x), guides.stream().map(Plot.Guide::x))
            .max(Comparator.naturalOrder())
            .orElse(1.0);
    double low =
        points.stream().mapToDouble(p -> p.low() == null ? p.y() : p.low()).min().orElse(0);
    double high =
        points.stream().mapToDouble(p -> p.high() == null ? p.y() : p.high()).max().orElse(1);
    return new Plot(
        id,
        title,
        description + left(),
        new Plot.Axis(axes[0], 0, right * 1.02),
        new Plot.Axis(axes[1], low, high),
        series,
        guides,
        List.of());
  }

  /** Which cells are not in the charts, in words. */
  private String left() {
    int missing = report.compared() - looks.size();
    return missing == 0
        ? ""
        : " Shown are "
            + looks.size()
            + " of "
            + report.compared()
            + " cells: the first in rank that there is something to show of.";
  }

  private double average() {
    return report.condition().load().averageCurrent();
  }

  private Optional<DischargeLine> nearest(ReportedCell cell) {
    return cell.discharges().stream()
        .min(Comparator.comparingDouble(line -> Math.abs(line.current() - average())));
  }

  private static List<Plot.Point> points(DischargeLine line) {
    List<Plot.Point> points = new ArrayList<>();
    for (int i = 0; i < line.charge().size(); i++) {
      points.add(Plot.Point.of(line.charge().get(i), line.voltage().get(i)));
    }
    return points;
  }

  private static Plot.Point energy(Delivered given) {
    Figure energy = given.energy();
    return new Plot.Point(given.current(), energy.value(), energy.low(), energy.high());
  }

  private static Optional<Plot.Point> point(ReportedCell cell) {
    Figure rating = cell.figure(Measure.CURRENT_RATING);
    Figure capacity = cell.figure(Measure.DELIVERED_CAPACITY);
    return rating.isKnown() && capacity.isKnown()
        ? Optional.of(
            new Plot.Point(rating.value(), capacity.value(), capacity.low(), capacity.high()))
        : Optional.empty();
  }

  /** Which cells of the other charts have no place over the rating, and why. */
  private String withoutPoint() {
    List<String> told = new ArrayList<>();
    for (ReportedCell cell : looks.keySet()) {
      if (point(cell).isEmpty()) {
        boolean rated = cell.figure(Measure.CURRENT_RATING).isKnown();
        told.add(cell.shortName() + (rated ? " (no capacity at the load)" : " (no rating)"));
      }
    }
    return told.isEmpty() ? "" : " Not shown: " + String.join(", ", told) + ".";
  }

  private List<String> notes(Plot plot) {
    List<String> sentences = new ArrayList<>();
    sentences.add(plot.title() + ". " + plot.description());
    sentences.add("Condition: " + ShortlistWords.condition(report.condition()) + ".");
    for (ReportedCell cell : looks.keySet()) {
      sentences.add(
          cell.rank()
              + "  "
              + cell.name()
              + ": "
              + SheetUsed.of(cell).text()
              + " ("
              + SheetUsed.approval(cell)
              + ")");
    }
    sentences.add(Caution.TEXT);
    return sentences.stream().flatMap(s -> Wrapping.wrap(s, NOTE_WIDTH).stream()).toList();
  }
}
