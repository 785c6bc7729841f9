package commonsheet.roundtrip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The figures of the round trip, by form, style, renderer, resolution and more. */
final class RoundTripTable {
  private static final String HEADER =
      String.format(
          Locale.ROOT,
          "%-26s" + " %6s".repeat(4) + " %7s" + " %6s".repeat(5) + " %7s".repeat(7) + "%n",
          "",
          "charts",
          "found",
          "whole",
          "curves",
          "right%",
          "sure%",
          "wrong",
          "missed",
          "spur.",
          "silent",
          "med%",
          "p95%",
          "sure95%",
          "y p95%",
          "within%",
          "s/chart",
          "cpu s");

  private RoundTripTable() {}

  static String text(List<ChartResult> results) {
    Map<String, Predicate<DrawnChart>> groups = new LinkedHashMap<>();
    groups.put("vector", c -> c.form().equals("vector"));
    groups.put("bitmap", c -> c.form().equals("bitmap"));
    groups.put("bitmap colour", c -> c.form().equals("bitmap") && !c.monochrome());
    groups.put("bitmap monochrome", c -> c.form().equals("bitmap") && c.monochrome());
    groups.put("vector monochrome", c -> c.form().equals("vector") && c.monochrome());
    for (String form : List.of("vector", "bitmap")) {
      each(groups, form, results, DrawnChart::renderer);
    }
    each(groups, "bitmap", results, c -> c.dpi() + " dpi");
    each(groups, "bitmap", results, c -> c.file() == null ? "png" : c.file());
    for (String form : List.of("vector", "bitmap")) {
      each(groups, form, results, c -> "labels " + c.legend());
      each(groups, form, results, DrawnChart::what);
      each(groups, form, results, DrawnChart::style);
    }
    StringBuilder text = new StringBuilder(HEADER);
    groups.forEach(
        (name, group) -> {
          List<ChartResult> of = results.stream().filter(r -> group.test(r.chart())).toList();
          if (!of.isEmpty()) {
            text.append(line(name, of));
          }
        });
    return text.toString();
  }

  private static void each(
      Map<String, Predicate<DrawnChart>> groups,
      String form,
      List<ChartResult> results,
      Function<DrawnChart, String> by) {
    results.stream()
        .map(r -> by.apply(r.chart()))
        .collect(Collectors.toCollection(TreeSet::new))
        .forEach(
            value ->
                groups.putIfAbsent(
                    form + " " + value, c -> c.form().equals(form) && by.apply(c).equals(value)));
  }

  private static String line(String name, List<ChartResult> of) {
    RoundTripFigures f = RoundTripFigures.of(of);
    return String.format(
        Locale.ROOT,
        "%-26s %6d %6d %6d %6d %7.1f %6.1f %6d %6d %6d %6d"
            + " %7.3f %7.3f %7.3f %7.3f %7.1f %7.3f %7.3f%n",
        name,
        of.size(),
        f.found(),
        f.whole(),
        f.curves(),
        100 * f.rightRate(),
        100 * f.sureRate(),
        f.wrong(),
        f.missed(),
        f.spurious(),
        f.silent(),
        100 * f.medianError(),
        100 * f.error95(),
        100 * f.sureError95(),
        100 * f.yError95(),
        100 * f.withinRate(),
        f.seconds(),
        f.processorSeconds());
  }

  /** The charts that are not wholly right, the worst first. */
  static String worst(List<ChartResult> results) {
    List<ChartResult> failed = new ArrayList<>(results.stream().filter(r -> !r.whole()).toList());
    failed.sort(
        Comparator.comparingInt(ChartResult::silent)
            .reversed()
            .thenComparing(r -> r.chart().name()));
    StringBuilder text = new StringBuilder();
    for (ChartResult result : failed) {
      text.append(result.chart().name())
          .append(
              String.format(
                  Locale.ROOT,
                  " (%s, labels %s; %d of %d right, %d silent; median %.3f %%)%n",
                  result.chart().style(),
                  result.chart().legend(),
                  result.right(),
                  result.chart().lines().size(),
                  result.silent(),
                  100 * RoundTripFigures.percentile(result.distances(), 0.5)));
      result.faults().forEach(fault -> text.append("  ").append(fault).append('\n'));
    }
    return text.toString();
  }

  /** Whole charts with a large error of their points, the largest first. */
  static String coarse(List<ChartResult> results, int most) {
    return results.stream()
        .filter(r -> r.distances().length > 0)
        .sorted(
            Comparator.comparingDouble(
                    (ChartResult r) -> RoundTripFigures.percentile(r.distances(), 0.95))
                .reversed())
        .limit(most)
        .map(
            r ->
                String.format(
                    Locale.ROOT,
                    "%s: median %.3f %%, 95th percentile %.3f %%, within %d of %d%n",
                    r.chart().name(),
                    100 * RoundTripFigures.percentile(r.distances(), 0.5),
                    100 * RoundTripFigures.percentile(r.distances(), 0.95),
                    r.within(),
                    r.points()))
        .collect(Collectors.joining());
  }
}
