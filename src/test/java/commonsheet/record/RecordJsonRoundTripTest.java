package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Writing and reading a record loses nothing, for any valid record of printed figures. */
class RecordJsonRoundTripTest {
  private static final int PAGES = 9;

  private static final Map<String, String> UNITS =
      Map.of("capacity", "A.h", "mass", "g", "chargeTemperature", "Cel", "cycleLife", "1");

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void readsBackEveryRecord(@ForAll("records") CellRecord record) throws RecordException {
    String text = RecordJson.write(record);
    CellRecord again = RecordJson.read(text, "record");
    assertEquals(record, again);
    assertEquals(text, RecordJson.write(again));
  }

  @Provide
  Arbitrary<CellRecord> records() {
    Arbitrary<List<Statement>> statements =
        statements().list().ofMaxSize(6).map(RecordJsonRoundTripTest::numbered);
    Arbitrary<List<Curve>> curves = curves().list().ofMaxSize(1);
    Arbitrary<List<Finding>> findings = findings().list().ofMaxSize(3);
    return Combinators.combine(cells(), sources(), statements, curves, findings, reviews())
        .as(
            (cell, source, s, c, f, review) ->
                withItsHash(
                    new CellRecord(CellRecord.SCHEMA, "tarn-1", cell, source, s, c, f, review)));
  }

  /** An approved record that holds what was approved; another would be read as reopened. */
  private static CellRecord withItsHash(CellRecord record) {
    Review review = record.review();
    return !review.state().equals(Review.APPROVED)
        ? record
        : record.with(
            new Review(
                review.state(),
                review.preparedBy(),
                review.preparedAt(),
                review.approvedBy(),
                review.approvedAt(),
                ContentHash.of(record),
                review.ownWork(),
                review.steps()));
  }

  private static List<Statement> numbered(List<Statement> statements) {
    List<Statement> numbered = new ArrayList<>();
    for (Statement s : statements) {
      numbered.add(
          new Statement(
              "s" + (numbered.size() + 1),
              s.quantity(),
              s.statistic(),
              s.value(),
              s.low(),
              s.high(),
              s.unit(),
              s.conditions(),
              s.evidence(),
              s.standing(),
              s.doubts(),
              s.original()));
    }
    return numbered;
  }

  private static Arbitrary<Statement> statements() {
    Arbitrary<Double[]> figures =
        Combinators.combine(figures().injectNull(0.2), figures(), figures())
            .as(
                (value, one, other) ->
                    value != null && one > other
                        ? new Double[] {value, null, null}
                        : new Double[] {value, Math.min(one, other), Math.max(one, other)});
    return Combinators.combine(
            Arbitraries.of(UNITS.keySet()),
            Arbitraries.of(Statistic.class).injectNull(0.3),
            figures,
            conditions(),
            evidence(),
            Arbitraries.of(Standing.class),
            words())
        .as(
            (quantity, statistic, f, conditions, evidence, standing, doubt) ->
                new Statement(
                    "s1",
                    quantity,
                    statistic,
                    f[0],
                    f[1],
                    f[2],
                    UNITS.get(quantity),
                    conditions,
                    evidence,
                    standing,
                    standing == Standing.UNSURE ? List.of(doubt) : List.of(),
                    standing == Standing.CORRECTED
                        ? new Original(null, statistic, f[0], f[1], f[2], conditions)
                        : null));
  }

  private static Arbitrary<Evidence> evidence() {
    Arbitrary<Double> confidence =
        Arbitraries.integers().between(0, 1000).map(n -> n / 1000.0).injectNull(0.5);
    return Combinators.combine(
            Arbitraries.integers().between(1, PAGES),
            boxes(),
            words(),
            Arbitraries.of(Method.class).filter(method -> method != Method.DERIVED),
            words().injectNull(0.5),
            confidence,
            words().injectNull(0.5))
        .as(
            (page, box, text, method, rule, sure, note) ->
                new Evidence(
                    page,
                    box,
                    text,
                    method,
                    rule,
                    sure == null ? WordSource.TEXT : WordSource.OCR,
                    sure,
                    note,
                    List.of()));
  }

  private static Arbitrary<Curve> curves() {
    Arbitrary<List<List<Double>>> points =
        figures().list().ofSize(2).list().ofMinSize(1).ofMaxSize(40);
    return Combinators.combine(words().injectNull(0.3), conditions(), points, evidence())
        .as(
            (label, conditions, p, evidence) ->
                new Curve(
                    "c1",
                    "discharge",
                    label,
                    conditions,
                    new Curve.Axis("capacity", "A.h", List.of(new Curve.Tick(128.4, 0.5, "500"))),
                    new Curve.Axis("voltage", "V", List.of()),
                    p,
                    new Curve.Uncertainty(0.01, 0),
                    Method.VECTOR_CURVE,
                    evidence,
                    Standing.READ,
                    List.of()));
  }

  private static Arbitrary<Finding> findings() {
    return Combinators.combine(Arbitraries.of(Severity.class), words(), words().injectNull(0.5))
        .as(
            (severity, text, source) ->
                new Finding(
                    "a/rule",
                    severity,
                    List.of(),
                    text,
                    source,
                    source == null
                        ? null
                        : new Acceptance("R. Moss", "2026-05-03T10:15:00Z", text)));
  }

  private static Arbitrary<Cell> cells() {
    return Combinators.combine(
            words().injectNull(0.3),
            words().injectNull(0.3),
            Arbitraries.of("cylindrical", "prismatic", "pouch", "coin").injectNull(0.3),
            evidence())
        .as(
            (maker, model, form, evidence) ->
                new Cell(
                    maker,
                    model,
                    null,
                    null,
                    form,
                    null,
                    model == null ? Map.of() : Map.of("model", evidence)));
  }

  private static Arbitrary<Source> sources() {
    return Combinators.combine(words().injectNull(0.3), Arbitraries.of("en", "en,zh", "de-CH"))
        .as(
            (title, language) ->
                new Source(
                    title,
                    null,
                    null,
                    null,
                    "tc-26e.pdf",
                    Records.SHA256,
                    PAGES,
                    language,
                    new Source.Layout("clauses", 2)));
  }

  private static Arbitrary<Review> reviews() {
    return Arbitraries.of(
        Review.DRAFT,
        new Review("draft", "R. Moss", "2026-05-03T10:15:00Z", null, null, null),
        new Review("approved", null, null, "I. Fell", "2026-05-04T08:00+02:00", Records.SHA256),
        new Review(
            "reopened",
            "R. Moss",
            "2026-05-03T10:15:00Z",
            "R. Moss",
            "2026-05-04T08:00Z",
            Records.SHA256,
            true,
            List.of(
                new ReviewStep(
                    ReviewStep.Kind.ACCEPTED,
                    "R. Moss",
                    "2026-05-03T10:15:00Z",
                    List.of("s1", "cell.model"),
                    "a/rule",
                    "The maker prints it so."))));
  }

  private static Arbitrary<Conditions> conditions() {
    List<String> free =
        Conditions.NAMES.stream().filter(name -> !name.startsWith("temperatureL")).toList();
    return Arbitraries.maps(Arbitraries.of(free), figures()).ofMaxSize(5).map(Conditions::new);
  }

  private static Arbitrary<List<Double>> boxes() {
    return Arbitraries.integers().between(0, 9999).map(n -> n / 10.0).list().ofSize(4);
  }

  /** Up to six significant digits, as sheets print them, from a millionth to a million. */
  private static Arbitrary<Double> figures() {
    return Combinators.combine(
            Arbitraries.integers().between(-999_999, 999_999), Arbitraries.integers().between(0, 6))
        .as((digits, places) -> digits / Math.pow(10, places))
        .map(figure -> figure == 0 ? 0.0 : figure);
  }

  private static Arbitrary<String> words() {
    return Arbitraries.strings().excludeChars('\uFFFE', '\uFFFF').ofMinLength(1).ofMaxLength(12);
  }
}
