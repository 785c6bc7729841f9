package commonsheet.export.report;

import commonsheet.compare.CellFigures;
import commonsheet.compare.Condition;
import commonsheet.compare.Contender;
import commonsheet.compare.DischargeLine;
import commonsheet.compare.Figure;
import commonsheet.compare.Load;
import commonsheet.compare.Measure;
import commonsheet.compare.Origin;
import commonsheet.compare.PackFigures;
import commonsheet.compare.Requirement;
import commonsheet.compare.Shortlist;
import commonsheet.compare.Verdict;
import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Review;
import commonsheet.record.Source;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Shortlists of invented cells for a survey boat, with figures of every origin. */
final class ShortlistExamples {
  /** What a sheet could say to break out of every form. */
  static final String HOSTILE =
      "=cmd|' /C x'!A0 <script>alert(1)</script>\" onload=\"x | **b** ]]> &amp; \u202Eevil\u0007";

  private static final Condition CONDITION = Condition.usual(Load.constant(7.8).withPeak(15));
  private static final Requirement BOAT = new Requirement(15.6, 30, 2, 4, 1, 2, 0.15, 8.0);

  private ShortlistExamples() {}

  /** Four cells, one of each verdict, under the load of a boat. */
  static Report boat() {
    return report(BOAT, "Heron 26");
  }

  /** The same without a machine. */
  static Report withoutMachine() {
    return report(null, "Heron 26");
  }

  /** The same with a sheet that means harm. */
  static Report hostile() {
    return report(BOAT, HOSTILE);
  }

  /** No cell at all. */
  static Report empty() {
    return new Report(
        new Shortlist(CONDITION, null, Measure.DELIVERED_ENERGY, List.of(), List.of()), List.of());
  }

  private static Report report(Requirement machine, String model) {
    List<ReportedCell> cells =
        List.of(
            carrying(machine, model),
            cell(2, "heron-14", "Heron 14", Verdict.NEAR_MISS, -0.0769230769230769, machine),
            cell(3, "heron-x", "Heron X", Verdict.NOT_KNOWN, null, machine),
            cell(4, "heron-6", null, Verdict.FAILS, -0.615384615384615, machine));
    return new Report(
        new Shortlist(
            CONDITION,
            machine,
            Measure.DELIVERED_SPECIFIC_ENERGY,
            cells.stream().map(ReportedCell::contender).toList(),
            List.of("The curves start from different charge voltages.")),
        cells);
  }

  private static ReportedCell carrying(Requirement machine, String model) {
    Map<Measure, Figure> figures = new EnumMap<>(Measure.class);
    figures.put(Measure.CURRENT_RATING, stated(20, "s1"));
    figures.put(Measure.MASS, new Figure(48.0, 47.0, 49.0, Origin.STATED, of("s2"), of(), false));
    figures.put(
        Measure.DELIVERED_CAPACITY,
        new Figure(
            2.8123456789,
            2.75,
            2.87,
            Origin.INTERPOLATED,
            of("c1", "c2"),
            of("between the curves at 5 A and 10 A"),
            false));
    figures.put(
        Measure.DELIVERED_ENERGY, new Figure(10.1, 9.7, 10.4, Origin.CURVE, of("c2"), of(), false));
    figures.put(
        Measure.DELIVERED_SPECIFIC_ENERGY,
        new Figure(210.4, null, null, Origin.DERIVED, of("c2", "s2"), of(model), true));
    figures.put(
        Measure.LOWEST_VOLTAGE,
        new Figure(null, 2.9, null, Origin.BOUNDED, of("c2"), of("at least this"), false));
    figures.put(
        Measure.HEAT, new Figure(1.6, 1.2, 2.1, Origin.MODELLED, of("s1"), of("a model"), true));
    CellRecord record =
        record(
            "heron-26",
            model,
            new Review("approved", null, null, "A. Keeper", "2031-06-01T10:00:00Z", null));
    Contender contender =
        new Contender(
            new CellFigures(record, CONDITION, figures),
            Verdict.CARRIES,
            0.282051282051282,
            "rated 20 A, asked 15.6 A: 28 % to spare",
            machine == null ? null : pack());
    return ReportedCell.of(1, contender, lines(), delivered());
  }

  private static ReportedCell cell(
      int rank, String id, String model, Verdict verdict, Double margin, Requirement machine) {
    Map<Measure, Figure> figures = new EnumMap<>(Measure.class);
    if (margin != null) {
      figures.put(Measure.CURRENT_RATING, stated(15.6 * (1 + margin), "s1"));
      figures.put(
          Measure.DELIVERED_CAPACITY,
          new Figure(2.0 + rank / 10.0, 2.0, 2.6, Origin.CURVE, of("c1"), of(), false));
    }
    Contender contender =
        new Contender(
            new CellFigures(record(id, model, Review.DRAFT), CONDITION, figures),
            verdict,
            margin,
            "a reason for " + verdict.label(),
            machine == null ? null : pack());
    return ReportedCell.of(rank, contender, List.of(), List.of());
  }

  private static CellRecord record(String id, String model, Review review) {
    Cell cell = new Cell("Tarn Cells", model, null, "Li-ion", "cylindrical", "18650", null);
    Source source =
        new Source(
            "Heron data sheet",
            "H-26-01",
            "3",
            "2031-05-17",
            id + ".pdf",
            "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08",
            9,
            "en",
            null);
    return new CellRecord(
        CellRecord.SCHEMA,
        id,
        cell,
        source,
        List.of(statement("s1", 2), statement("s2", 3)),
        List.of(curve("c1", 5), curve("c2", 5)),
        List.of(),
        review);
  }

  private static Statement statement(String id, int page) {
    return new Statement(
        id, "mass", null, 48.0, null, null, "g", Conditions.NONE, at(page), Standing.READ, null);
  }

  private static Curve curve(String id, int page) {
    return new Curve(
        id,
        "discharge",
        id,
        null,
        null,
        null,
        null,
        null,
        Method.VECTOR_CURVE,
        at(page),
        Standing.READ,
        null);
  }

  private static Evidence at(int page) {
    return new Evidence(page, null, null, Method.TABLE_CELL, null, null, null, null, null);
  }

  private static List<DischargeLine> lines() {
    return List.of(
        new DischargeLine("c1", 5, 23.0, of(0.0, 1.0, 2.9), of(4.1, 3.7, 3.0), false),
        new DischargeLine("c2", 10, null, of(0.0, 1.0, 2.7), of(4.0, 3.6, 3.0), true));
  }

  private static List<Delivered> delivered() {
    return List.of(
        new Delivered(5, true, measured(2.9), measured(10.6)),
        new Delivered(7.5, false, measured(2.81), measured(10.2)),
        new Delivered(10, true, measured(2.7), measured(9.6)));
  }

  private static Figure measured(double value) {
    return new Figure(value, value * 0.99, value * 1.01, Origin.CURVE, of("c1"), of(), false);
  }

  private static Figure stated(double value, String from) {
    return new Figure(value, null, null, Origin.STATED, of(from), of("the maximum"), false);
  }

  private static PackFigures pack() {
    Figure some = new Figure(5.62, 5.5, 5.74, Origin.DERIVED, of("c2"), of(), false);
    Figure none = Figure.absent("no cruise speed is given");
    return new PackFigures(some, some, some, some, some, some, some, some, some, some, some, none);
  }

  @SafeVarargs
  private static <T> List<T> of(T... items) {
    return List.of(items);
  }
}
