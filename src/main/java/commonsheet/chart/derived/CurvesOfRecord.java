package commonsheet.chart.derived;

import commonsheet.chart.Chart;
import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.Finding;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Puts curves into a record, with what they give. Nothing that a person has put there or settled is
 * lost: curves they confirmed, corrected or rejected, points they placed, logs they measured.
 */
public final class CurvesOfRecord {
  private static final Set<Standing> SETTLED =
      Set.of(Standing.CONFIRMED, Standing.CORRECTED, Standing.REJECTED);
  private static final Set<Method> OWN = Set.of(Method.HAND_PLACED, Method.MEASURED);
  private static final String CHART_RULES = "chart/";

  /** Boxes of one plot agree to this, in points, whichever reading found them. */
  private static final double SAME_PLACE = 3;

  private CurvesOfRecord() {}

  /**
   * A record with the curves of its sheet's charts in place of those that were read before.
   *
   * @param charts every chart of the sheet, or of one page
   * @param page the only page that was looked at, from 1; null for all
   */
  public static CellRecord traced(CellRecord record, List<Chart> charts, Integer page) {
    Set<String> relied = DerivedFigures.reliedOn(record);
    Predicate<Curve> stays =
        curve ->
            isPersons(curve)
                || relied.contains(curve.id())
                || (page != null && !page.equals(curve.evidence().page()));
    List<Curve> curves = new ArrayList<>(record.curves().stream().filter(stays).toList());
    List<Finding> findings = new ArrayList<>(kept(record.findings(), curves, page));
    int next = curves.stream().mapToInt(CurvesOfRecord::number).max().orElse(0) + 1;
    for (Chart chart : charts) {
      Chart numbered = chart.numberedFrom(next);
      next += chart.curves().size();
      List<Curve> fresh =
          numbered.curves().stream()
              .filter(c -> curves.stream().noneMatch(o -> settles(o, c)))
              .toList();
      List<String> left = new ArrayList<>(numbered.curves().stream().map(Curve::id).toList());
      left.removeAll(fresh.stream().map(Curve::id).toList());
      curves.addAll(fresh);
      numbered.findings().stream()
          .filter(finding -> finding.about().isEmpty() || !left.containsAll(finding.about()))
          .map(finding -> without(finding, left))
          .forEach(findings::add);
    }
    return DerivedFigures.applied(with(record, curves, findings));
  }

  /**
   * A record with curves from a file of the user's, in place of those that came from a file of the
   * same name before.
   */
  public static CellRecord added(CellRecord record, List<Curve> own) {
    Set<String> relied = DerivedFigures.reliedOn(record);
    List<Curve> curves = new ArrayList<>();
    for (Curve curve : record.curves()) {
      boolean replaced =
          OWN.contains(curve.method())
              && own.stream()
                  .anyMatch(o -> Objects.equals(o.evidence().file(), curve.evidence().file()));
      if (!replaced || SETTLED.contains(curve.standing()) || relied.contains(curve.id())) {
        curves.add(curve);
      }
    }
    int next = record.curves().stream().mapToInt(CurvesOfRecord::number).max().orElse(0);
    for (Curve curve : own) {
      next++;
      curves.add(curve.named("c" + next));
    }
    List<String> ids = curves.stream().map(Curve::id).toList();
    List<Finding> findings =
        record.findings().stream()
            .filter(
                f -> f.about().stream().noneMatch(id -> id.startsWith("c") && !ids.contains(id)))
            .toList();
    return DerivedFigures.applied(with(record, curves, findings));
  }

  /**
   * A record with the points and logs that a person put into an earlier one of the sheet and that
   * it does not have itself.
   */
  public static CellRecord keeping(CellRecord fresh, CellRecord earlier) {
    List<Curve> own =
        earlier.curves().stream()
            .filter(curve -> OWN.contains(curve.method()))
            .filter(curve -> fresh.curves().stream().noneMatch(c -> sameOrigin(c, curve)))
            .toList();
    return own.isEmpty() ? fresh : added(fresh, own);
  }

  private static boolean sameOrigin(Curve one, Curve other) {
    return one.method() == other.method()
        && Objects.equals(one.evidence().file(), other.evidence().file())
        && Objects.equals(one.evidence().box(), other.evidence().box());
  }

  /** A record with one more finding. */
  static CellRecord told(CellRecord record, Finding finding) {
    List<Finding> findings = new ArrayList<>(record.findings());
    findings.add(finding);
    return with(record, record.curves(), findings);
  }

  private static boolean isPersons(Curve curve) {
    return OWN.contains(curve.method()) || SETTLED.contains(curve.standing());
  }

  /** Whether a curve that stays is the one that was traced again. */
  private static boolean settles(Curve settled, Curve fresh) {
    return !OWN.contains(settled.method())
        && Objects.equals(settled.evidence().page(), fresh.evidence().page())
        && isSamePlace(settled.evidence().box(), fresh.evidence().box())
        && Objects.equals(settled.label(), fresh.label())
        && settled.y().quantity().equals(fresh.y().quantity());
  }

  private static boolean isSamePlace(List<Double> one, List<Double> other) {
    for (int i = 0; i < one.size() && i < other.size(); i++) {
      if (Math.abs(one.get(i) - other.get(i)) > SAME_PLACE) {
        return false;
      }
    }
    return one.size() == other.size();
  }

  /** Findings that stay: those that are not of charts, and those of charts not looked at. */
  private static List<Finding> kept(List<Finding> findings, List<Curve> curves, Integer page) {
    List<String> ids = curves.stream().map(Curve::id).toList();
    return findings.stream()
        .filter(
            finding ->
                finding.rule().startsWith(CHART_RULES)
                    ? page != null && isOfOtherPages(finding, ids, page)
                    : finding.about().stream()
                        .allMatch(id -> id.startsWith("s") || ids.contains(id)))
        .toList();
  }

  /** A finding of a chart without curves names its page in words only. */
  private static boolean isOfOtherPages(Finding finding, List<String> ids, int page) {
    return finding.about().isEmpty()
        ? !finding.message().contains("on page " + page + " ")
        : ids.containsAll(finding.about());
  }

  private static Finding without(Finding finding, List<String> gone) {
    List<String> about = finding.about().stream().filter(id -> !gone.contains(id)).toList();
    return new Finding(
        finding.rule(), finding.severity(), about, finding.message(), finding.source());
  }

  private static int number(Curve curve) {
    return Integer.parseInt(curve.id().substring(1));
  }

  private static CellRecord with(CellRecord record, List<Curve> curves, List<Finding> findings) {
    return new CellRecord(
        record.schema(),
        record.id(),
        record.cell(),
        record.source(),
        record.statements(),
        curves,
        findings,
        record.review());
  }
}
