package commonsheet.workbench.desk;

import commonsheet.chart.overlay.CurvesOnPage;
import commonsheet.export.AmountText;
import commonsheet.export.ConditionText;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Finding;
import commonsheet.record.Method;
import commonsheet.record.Original;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.review.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** The statements and curves of a record in words. */
final class PartViews {
  /** Behind every page: what stands on none comes after what does. */
  private static final int NO_PAGE = Integer.MAX_VALUE;

  /** Places on paper to a tenth of a point are finer than any screen shows. */
  private static final double FINENESS = 10;

  private final CellRecord record;

  private PartViews(CellRecord record) {
    this.record = record;
  }

  /** In the order of the sheet, statements before curves on each page; derived ones last. */
  static List<RecordView.Part> of(CellRecord record) {
    PartViews views = new PartViews(record);
    List<RecordView.Part> parts = new ArrayList<>();
    record.statements().forEach(statement -> parts.add(views.part(statement)));
    record.curves().forEach(curve -> parts.add(views.part(curve)));
    parts.sort(
        Comparator.comparing(RecordView.Part::derived)
            .thenComparing(part -> part.place() == null ? NO_PAGE : part.place().page()));
    return List.copyOf(parts);
  }

  private RecordView.Part part(Statement statement) {
    Evidence evidence = statement.evidence();
    boolean derived = evidence.method() == Method.DERIVED;
    return new RecordView.Part(
        statement.id(),
        "statement",
        statement.quantity(),
        QuantityCatalogue.standard().get(statement.quantity()).label(),
        label(statement.statistic()),
        AmountText.shown(statement.value(), statement.low(), statement.high(), statement.unit()),
        AmountText.exact(statement.value(), statement.low(), statement.high(), statement.unit()),
        ConditionText.of(statement.conditions()),
        statement.standing().label(),
        Progress.isSettled(statement, record),
        derived,
        derived ? open(evidence.from()) : List.of(),
        statement.doubts(),
        name(evidence.method()),
        original(statement),
        evidence.text(),
        evidence.note(),
        place(evidence),
        null,
        findings(statement.id()));
  }

  private RecordView.Part part(Curve curve) {
    return new RecordView.Part(
        curve.id(),
        "curve",
        null,
        kind(curve.kind()),
        null,
        ranges(curve),
        curve.label(),
        ConditionText.of(curve.conditions()),
        curve.standing().label(),
        Progress.isSettled(curve),
        false,
        List.of(),
        curve.doubts(),
        name(curve.method()),
        original(curve),
        curve.label(),
        curve.evidence().note(),
        place(curve.evidence()),
        trace(curve),
        findings(curve.id()));
  }

  /** Such as {@code Discharge curve} for {@code discharge}. */
  static String kind(String kind) {
    String words = kind.replace('-', ' ') + " curve";
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** What its axes span, such as {@code 0 to 4.82 Ah, 2.5 to 4.14 V}. */
  static String ranges(Curve curve) {
    return axis(curve, curve.x(), 0) + ", " + axis(curve, curve.y(), 1);
  }

  private static String axis(Curve curve, Curve.Axis axis, int index) {
    double least = curve.points().stream().mapToDouble(p -> p.get(index)).min().orElse(0);
    double most = curve.points().stream().mapToDouble(p -> p.get(index)).max().orElse(0);
    return AmountText.shown(null, least, most, axis.unit());
  }

  private static List<List<Double>> trace(Curve curve) {
    List<List<Double>> trace =
        CurvesOnPage.mark(curve).points().stream()
            .map(point -> List.of(fine(point.x()), fine(point.y())))
            .toList();
    return trace.isEmpty() || curve.evidence().page() == null ? null : trace;
  }

  private static double fine(double place) {
    return Math.rint(place * FINENESS) / FINENESS;
  }

  private static String original(Statement statement) {
    Original before = statement.original();
    if (before == null) {
      return null;
    }
    String quantity = before.quantity() == null ? statement.quantity() : before.quantity();
    return "was "
        + (before.quantity() == null
            ? ""
            : QuantityCatalogue.standard().get(quantity).label() + " ")
        + (before.statistic() == null ? "" : label(before.statistic()) + " ")
        + AmountText.shown(
            before.value(),
            before.low(),
            before.high(),
            QuantityCatalogue.standard().get(quantity).unit())
        + conditions(before.conditions());
  }

  private static String original(Curve curve) {
    Curve.Original before = curve.original();
    if (before == null) {
      return null;
    }
    String label =
        Objects.equals(before.label(), curve.label())
            ? ""
            : before.label() == null ? " without a label" : " \"" + before.label() + "\"";
    return "was" + label + conditions(before.conditions());
  }

  private static String conditions(Conditions conditions) {
    return conditions.isEmpty() ? "" : " (" + ConditionText.of(conditions) + ")";
  }

  private List<String> open(List<String> ids) {
    return ids.stream().filter(this::isOpen).toList();
  }

  private boolean isOpen(String id) {
    Curve curve = record.curve(id);
    Statement statement = record.statement(id);
    return (curve != null && !Progress.isSettled(curve))
        || (statement != null && !Progress.isSettled(statement, record));
  }

  private List<Integer> findings(String id) {
    List<Integer> places = new ArrayList<>();
    List<Finding> findings = record.findings();
    for (int i = 0; i < findings.size(); i++) {
      if (findings.get(i).about().contains(id)) {
        places.add(i);
      }
    }
    return places;
  }

  static RecordView.Place place(Evidence evidence) {
    return evidence == null || evidence.page() == null || evidence.box().isEmpty()
        ? null
        : new RecordView.Place(evidence.page(), evidence.box());
  }

  private static String name(Method method) {
    return method == null ? null : method.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String label(Statistic statistic) {
    return statistic == null ? null : statistic.label();
  }
}
