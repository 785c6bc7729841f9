package commonsheet.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Evidence;
import commonsheet.record.Finding;
import commonsheet.record.Original;
import commonsheet.record.RecordJson;
import commonsheet.record.RecordValidator;
import commonsheet.record.Records;
import commonsheet.record.Review;
import commonsheet.record.ReviewStep;
import commonsheet.record.Severity;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What persons do with a record, and when it can be approved. */
class SettlingTest {
  private static final Instant NOW = Instant.parse("2026-05-03T10:15:00.5Z");
  private static final Person CURATOR = new Person("curator");
  private static final Person REVIEWER = new Person("second reviewer");
  private static final Settling BY_CURATOR = new Settling(CURATOR, NOW);
  private static final Settling BY_REVIEWER = new Settling(REVIEWER, NOW);

  private static final Statement MASS =
      Records.between(
          Records.statement("s1", "mass", null, 45, "g", Conditions.NONE, 3), 45.0, 44, 46);
  private static final Statement CAPACITY =
      Records.statement("s2", "capacity", Statistic.MINIMUM, 2.5, "A.h", Conditions.NONE, 4);
  private static final Statement VOLTAGE =
      Records.standing(
          Records.statement("s3", "chargeVoltage", null, 4.2, "V", Conditions.NONE, 4),
          Standing.UNSURE);
  private static final CellRecord RECORD = Records.with(MASS, CAPACITY, VOLTAGE);

  @Test
  void confirmsWhatIsNamedAndSaysWho() {
    CellRecord after = BY_REVIEWER.confirmed(RECORD, List.of("s1", "s3"));
    assertEquals(Standing.CONFIRMED, after.statement("s1").standing());
    assertEquals(Standing.CONFIRMED, after.statement("s3").standing());
    assertEquals(Standing.READ, after.statement("s2").standing());
    assertEquals(List.of("s2"), Progress.of(after).unsettled());
    ReviewStep step = after.review().steps().get(0);
    assertEquals("second reviewer", step.by());
    assertEquals("2026-05-03T10:15:00Z", step.at());
    assertEquals(List.of("s1", "s3"), step.about());
    assertNull(after.review().preparedBy());
    assertValid(after);
  }

  /** 45 ± 1 g corrected to 48 g is 48 ± 1 g; what was first read stays through a second one. */
  @Test
  void keepsTheOriginalReadingOfACorrectedValue() throws Exception {
    Correction toFortyEight = new Correction(48.0, null, null, false, null, null);
    Correction toMaximum = new Correction(null, null, Statistic.MAXIMUM, false, null, null);
    CellRecord after = BY_CURATOR.corrected(RECORD, "s1", toFortyEight, "the drawing says so");
    Statement corrected = after.statement("s1");
    assertEquals(Standing.CORRECTED, corrected.standing());
    assertEquals(List.of(48.0, 47.0, 49.0), values(corrected));
    assertEquals(new Original(null, null, 45.0, 44.0, 46.0, Conditions.NONE), corrected.original());
    assertEquals("as printed", corrected.evidence().text());
    assertEquals("curator", after.review().preparedBy());
    assertValid(after);
    CellRecord again = BY_CURATOR.corrected(after, "s1", toMaximum, null);
    assertEquals(45.0, again.statement("s1").original().value());
    assertEquals(Statistic.MAXIMUM, again.statement("s1").statistic());
  }

  @Test
  void correctsConditionsAndBounds() throws Exception {
    Correction correction =
        new Correction(
            null,
            new Correction.Bounds(2.4, 2.6),
            null,
            true,
            Map.of(Conditions.TEMPERATURE, 25.0),
            null);
    Statement corrected = BY_CURATOR.corrected(RECORD, "s2", correction, null).statement("s2");
    assertEquals(List.of(2.5, 2.4, 2.6), values(corrected));
    assertNull(corrected.statistic());
    assertEquals(25, corrected.conditions().get(Conditions.TEMPERATURE));
  }

  @Test
  void correctsWhichCellItIs() throws Exception {
    CellRecord after = BY_CURATOR.corrected(RECORD, CellMember.named("cell.chemistry"), "LiFePO4");
    assertEquals("LiFePO4", after.cell().chemistry());
    assertEquals("was not read", after.review().steps().get(0).remark());
    assertValid(after);
    assertThrows(ReviewException.class, () -> CellMember.named("cell.colour"));
  }

  @Test
  void returnsWithARemarkThatStandsAsADoubt() throws Exception {
    CellRecord after = BY_REVIEWER.returned(RECORD, List.of("s1"), "is this the pack's?");
    assertEquals(Standing.UNSURE, after.statement("s1").standing());
    assertEquals(List.of("second reviewer: is this the pack's?"), after.statement("s1").doubts());
    assertTrue(Progress.of(after).unsettled().contains("s1"));
    assertValid(after);
    assertThrows(ReviewException.class, () -> BY_REVIEWER.returned(RECORD, List.of("s1"), " "));
  }

  /** A range takes in what stands as read; the unsure is to be named by itself. */
  @Test
  void leavesTheUnsureOutOfRanges() throws Exception {
    assertEquals(new Ids(List.of("s1", "s2"), List.of("s3")), Ids.of(List.of("s1-s3"), RECORD));
    assertEquals(new Ids(List.of("s1", "s2"), List.of("s3")), Ids.of(List.of("s1-3"), RECORD));
    assertEquals(
        new Ids(List.of("s1", "s2", "s3"), List.of()), Ids.of(List.of("s1-s3", "s3"), RECORD));
    for (String none : List.of("s4", "s1-s9", "all", "s1-c1", "c1", "*", "s0")) {
      assertThrows(ReviewException.class, () -> Ids.of(List.of(none), RECORD), none);
    }
  }

  @Test
  void acceptsAFindingForAReason() throws Exception {
    Finding finding =
        new Finding("a/rule", Severity.ERROR, List.of("s1"), "The mass is odd.", "a source");
    CellRecord record = settled().withFindings(List.of(finding));
    assertEquals(List.of("an error is open, a/rule: The mass is odd."), Approval.obstacles(record));
    CellRecord after = BY_CURATOR.accepted(record, "a/rule", List.of(), "The maker prints it so.");
    assertEquals(List.of(), Approval.obstacles(after));
    assertEquals("The maker prints it so.", after.findings().get(0).accepted().reason());
    assertValid(after);
    assertThrows(
        ReviewException.class, () -> BY_CURATOR.accepted(after, "a/rule", List.of(), "again"));
    assertThrows(ReviewException.class, () -> BY_CURATOR.accepted(record, "a/rule", List.of(), ""));
  }

  @Test
  void approvesOnlyWhatIsSettled() throws Exception {
    ReviewException refused =
        assertThrows(
            ReviewException.class,
            () ->
                Approval.given(BY_REVIEWER.confirmed(RECORD, List.of("s1")), REVIEWER, false, NOW));
    assertEquals(
        "the record \"tarn-cells-tc-26e\" is not approved: nobody has settled s2, s3",
        refused.getMessage());
    assertThrows(ReviewException.class, () -> Approval.given(Records.with(), REVIEWER, false, NOW));
    CellRecord approved = Approval.given(settled(), REVIEWER, false, NOW);
    assertEquals(Review.APPROVED, approved.review().state());
    assertEquals(List.of(), Approval.faults(approved));
    assertNull(approved.review().ownWork());
    assertValid(approved);
    assertEquals(approved, RecordJson.read(RecordJson.write(approved), "record"));
  }

  @Test
  void refusesOwnWorkUnlessItIsSaid() throws Exception {
    CellRecord mine = new Settling(new Person("Second  Reviewer"), NOW).prepared(settled());
    ReviewException refused =
        assertThrows(ReviewException.class, () -> Approval.given(mine, REVIEWER, false, NOW));
    assertTrue(refused.getMessage().contains("second reviewer prepared it"), refused.getMessage());
    CellRecord approved = Approval.given(mine, REVIEWER, true, NOW);
    assertEquals(true, approved.review().ownWork());
    assertEquals(List.of(), Approval.faults(approved));
    CellRecord others = Approval.given(mine, CURATOR, true, NOW);
    assertNull(others.review().ownWork());
  }

  /** Who corrected once stays a preparer, whoever worked on it afterwards. */
  @Test
  void remembersEveryPreparer() throws Exception {
    CellRecord record =
        BY_CURATOR.corrected(
            RECORD, "s1", new Correction(48.0, null, null, false, null, null), null);
    record = BY_REVIEWER.rejected(record, List.of("s2", "s3"), "of another cell");
    assertTrue(Approval.isOwnWork(record, CURATOR));
    assertTrue(Approval.isOwnWork(record, REVIEWER));
    assertFalse(Approval.isOwnWork(record, new Person("third reviewer")));
  }

  @Test
  void reopensAnApprovedRecordThatIsChanged() throws Exception {
    CellRecord approved = Approval.given(settled(), REVIEWER, false, NOW);
    CellRecord changed = BY_CURATOR.rejected(approved, List.of("s1"), "of the pack");
    assertEquals(Review.REOPENED, changed.review().state());
    assertEquals(
        List.of(
            "its content has changed since second reviewer approved it at 2026-05-03T10:15:00Z"),
        Approval.faults(changed));
    assertEquals(
        ReviewStep.Kind.REOPENED,
        changed.review().steps().get(changed.review().steps().size() - 2).step());
    assertEquals(Review.APPROVED, Approval.given(changed, REVIEWER, false, NOW).review().state());
  }

  /** A value changed in the file by hand, with an editor. */
  @Test
  void readsAnApprovedRecordThatWasEditedAsReopened() throws Exception {
    String text = RecordJson.write(Approval.given(settled(), REVIEWER, false, NOW));
    CellRecord edited = RecordJson.read(text.replace("\"value\": 2.5", "\"value\": 3.5"), "record");
    assertEquals(Review.REOPENED, edited.review().state());
    assertFalse(Approval.faults(edited).isEmpty());
  }

  /** A record of which the review alone was forged to say that it is approved. */
  @Test
  void findsAForgedApproval() throws Exception {
    CellRecord settledByNobody = RECORD;
    Review forged =
        new Review(
            Review.APPROVED,
            "curator",
            null,
            "curator",
            "2026-05-03T10:15:00Z",
            commonsheet.record.ContentHash.of(settledByNobody));
    assertEquals(
        List.of(
            "nobody has settled s1, s2, s3",
            "curator prepared it, approved it, and did not say so"),
        Approval.faults(settledByNobody.with(forged)));
  }

  @Test
  void settlesADerivedValueWithWhatItComesFrom() {
    Statement derived =
        new Statement(
            "s9",
            "energy",
            null,
            9.0,
            null,
            null,
            "W.h",
            Conditions.NONE,
            Evidence.derived("derived/energy", "capacity times voltage", List.of("s2")),
            Standing.READ,
            List.of());
    CellRecord record = Records.with(CAPACITY, derived);
    assertEquals(List.of("s2"), Progress.of(record).unsettled());
    assertEquals(List.of(), Progress.of(BY_REVIEWER.confirmed(record, List.of("s2"))).unsettled());
    assertEquals(
        List.of("s9"), Progress.of(BY_REVIEWER.rejected(record, List.of("s2"), null)).unsettled());
  }

  @Test
  void takesNoNameThatIsNone() {
    for (String name : List.of("", "  ", "two\nlines", "x".repeat(81))) {
      assertThrows(IllegalArgumentException.class, () -> new Person(name));
    }
    assertTrue(new Person(" Second   Reviewer ").is("second reviewer"));
  }

  private static CellRecord settled() {
    return BY_REVIEWER.confirmed(RECORD, List.of("s1", "s2", "s3"));
  }

  private static List<Double> values(Statement statement) {
    return List.of(statement.value(), statement.low(), statement.high());
  }

  private static void assertValid(CellRecord record) {
    assertEquals(List.of(), RecordValidator.problems(RecordJson.write(record)));
  }
}
