package commonsheet.chart;

import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Finding;
import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * One chart of a sheet, read.
 *
 * @param page from 1
 * @param box the plot area, in points from the top left of the page as displayed
 * @param title the heading or caption, as printed; null where none stands by the plot
 * @param kind {@code discharge}, {@code charge}, {@code cycle-life}, {@code
 *     capacity-over-temperature}, {@code resistance-over-state-of-charge}, {@code pulse} or {@code
 *     other}
 * @param conditions what the captions and boxes by the plot say of all its curves
 * @param curves in the order of drawing; none where a scale could not be read, which a finding says
 * @param findings what a person should look at
 */
public record Chart(
    int page,
    Box box,
    String title,
    String kind,
    Conditions conditions,
    List<Curve> curves,
    List<Finding> findings) {
  public Chart {
    curves = List.copyOf(curves);
    findings = List.copyOf(findings);
  }

  /**
   * This chart with its curves called c{@code first}, c{@code first + 1} and so on, in the findings
   * as well.
   *
   * @param first from 1
   */
  public Chart numberedFrom(int first) {
    Map<String, String> names = new HashMap<>();
    List<Curve> named = new ArrayList<>();
    for (Curve curve : curves) {
      String id = "c" + (first + named.size());
      names.put(curve.id(), id);
      named.add(curve.named(id));
    }
    List<Finding> told = new ArrayList<>();
    for (Finding finding : findings) {
      List<String> about = finding.about().stream().map(id -> names.getOrDefault(id, id)).toList();
      told.add(
          new Finding(
              finding.rule(), finding.severity(), about, finding.message(), finding.source()));
    }
    return new Chart(page, box, title, kind, conditions, named, told);
  }
}
