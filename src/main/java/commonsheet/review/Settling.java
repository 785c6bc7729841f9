package commonsheet.review;

import commonsheet.record.Acceptance;
import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.Finding;
import commonsheet.record.Review;
import commonsheet.record.ReviewStep;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What one person does with the parts of a record at one time. Every method gives the record as it
 * is afterwards, with the step among those of its review; an approved record is reopened by it.
 *
 * @param person who
 * @param at when; kept to the second
 */
public record Settling(Person person, Instant at) {
  public Settling {
    at = at.truncatedTo(ChronoUnit.SECONDS);
  }

  /** The person compared them with the sheet and agrees. */
  public CellRecord confirmed(CellRecord record, List<String> ids) {
    return settled(record, ids, Standing.CONFIRMED, ReviewStep.Kind.CONFIRMED, null);
  }

  /**
   * The person found that the sheet does not say them.
   *
   * @param reason in their words, or null
   */
  public CellRecord rejected(CellRecord record, List<String> ids, String reason) {
    return settled(record, ids, Standing.REJECTED, ReviewStep.Kind.REJECTED, reason);
  }

  /** Gives them back with a remark: they stand as unsure because of it. */
  public CellRecord returned(CellRecord record, List<String> ids, String remark)
      throws ReviewException {
    String doubt = person.name() + ": " + required(remark, "a remark by --remark TEXT");
    CellRecord after =
        record
            .withStatements(
                record.statements().stream()
                    .map(
                        s ->
                            ids.contains(s.id())
                                ? s.standing(Standing.UNSURE, more(s.doubts(), doubt))
                                : s)
                    .toList())
            .withCurves(
                record.curves().stream()
                    .map(c -> ids.contains(c.id()) ? c.doubted(doubt) : c)
                    .toList());
    return stepped(after, ReviewStep.Kind.RETURNED, ids, null, remark);
  }

  /** Puts something else in place of what was read, which is kept beside it. */
  public CellRecord corrected(CellRecord record, String id, Correction correction, String remark)
      throws ReviewException {
    List<Statement> statements = new ArrayList<>();
    for (Statement statement : record.statements()) {
      statements.add(statement.id().equals(id) ? correction.of(statement) : statement);
    }
    List<Curve> curves = new ArrayList<>();
    for (Curve curve : record.curves()) {
      curves.add(curve.id().equals(id) ? correction.of(curve) : curve);
    }
    return stepped(
        record.withStatements(statements).withCurves(curves),
        ReviewStep.Kind.CORRECTED,
        List.of(id),
        null,
        remark);
  }

  /**
   * Adds a value that stands on the sheet and was not read.
   *
   * @param statement with its evidence; it gets the next free id
   */
  public CellRecord added(CellRecord record, Statement statement, String remark) {
    int last =
        record.statements().stream()
            .mapToInt(s -> Integer.parseInt(s.id().substring(1)))
            .max()
            .orElse(0);
    String id = "s" + (last + 1);
    List<Statement> statements = new ArrayList<>(record.statements());
    statements.add(statement.named(id).standing(Standing.CORRECTED, List.of()));
    return stepped(
        record.withStatements(statements), ReviewStep.Kind.ADDED, List.of(id), null, remark);
  }

  /**
   * Puts curves as the person drew them in place of those that were read, and adds new ones.
   *
   * @param changed each with the id of one of the record and what was read before
   * @param added without ids; each gets the next free one
   */
  public CellRecord drawn(
      CellRecord record, List<Curve> changed, List<Curve> added, String remark) {
    List<Curve> curves = new ArrayList<>();
    for (Curve curve : record.curves()) {
      curves.add(changed.stream().filter(c -> c.id().equals(curve.id())).findFirst().orElse(curve));
    }
    int last = curves.stream().mapToInt(c -> Integer.parseInt(c.id().substring(1))).max().orElse(0);
    List<String> ids = new ArrayList<>();
    for (Curve curve : added) {
      last++;
      ids.add("c" + last);
      curves.add(curve.named("c" + last));
    }
    CellRecord after = record.withCurves(curves);
    if (!changed.isEmpty()) {
      List<String> about = changed.stream().map(Curve::id).toList();
      after = stepped(after, ReviewStep.Kind.CORRECTED, about, null, remark);
    }
    return ids.isEmpty() ? after : stepped(after, ReviewStep.Kind.ADDED, ids, null, remark);
  }

  /** Puts another name, chemistry, form … of the cell in place of what was read. */
  public CellRecord corrected(CellRecord record, CellMember member, String text) {
    Cell cell = record.cell();
    String before = member.of(cell);
    String remark = before == null ? "was not read" : "was \"" + before + "\"";
    return stepped(
        record.with(member.set(cell, text)),
        ReviewStep.Kind.CORRECTED,
        List.of(member.label()),
        null,
        remark);
  }

  /**
   * Lets findings stand for a reason.
   *
   * @param rule of the findings
   * @param about only findings about these ids; empty for all of the rule
   */
  public CellRecord accepted(CellRecord record, String rule, List<String> about, String reason)
      throws ReviewException {
    String why = required(reason, "why by --reason TEXT");
    Acceptance acceptance = new Acceptance(person.name(), at.toString(), why);
    List<String> concerned = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    boolean found = false;
    for (Finding finding : record.findings()) {
      boolean meant =
          finding.rule().equals(rule) && finding.isOpen() && finding.about().containsAll(about);
      found |= meant;
      findings.add(meant ? finding.accepted(acceptance) : finding);
      if (meant) {
        finding.about().stream().filter(id -> !concerned.contains(id)).forEach(concerned::add);
      }
    }
    if (!found) {
      throw new ReviewException(
          "the record \""
              + record.id()
              + "\" has no open finding of the rule "
              + rule
              + (about.isEmpty() ? "" : " about " + String.join(", ", about))
              + "; review show lists what is open");
    }
    return stepped(record.withFindings(findings), ReviewStep.Kind.ACCEPTED, concerned, rule, why);
  }

  /** Begins a record that is typed in: what it says of its cell comes from the person. */
  public CellRecord begun(CellRecord record) {
    List<String> members =
        Arrays.stream(CellMember.values())
            .filter(member -> member.of(record.cell()) != null)
            .map(CellMember::label)
            .toList();
    return stepped(record, ReviewStep.Kind.ADDED, members, null, null);
  }

  /** Says that the person has prepared the record for a reviewer. */
  public CellRecord prepared(CellRecord record) {
    return stepped(record, ReviewStep.Kind.PREPARED, List.of(), null, null);
  }

  private CellRecord settled(
      CellRecord record, List<String> ids, Standing standing, ReviewStep.Kind kind, String remark) {
    CellRecord after =
        record
            .withStatements(
                record.statements().stream()
                    .map(s -> ids.contains(s.id()) ? s.standing(standing, List.of()) : s)
                    .toList())
            .withCurves(
                record.curves().stream()
                    .map(c -> ids.contains(c.id()) ? c.standing(standing, List.of()) : c)
                    .toList());
    return stepped(after, kind, ids, null, remark);
  }

  private CellRecord stepped(
      CellRecord record, ReviewStep.Kind kind, List<String> about, String rule, String remark) {
    Review review = record.review();
    if (review.state().equals(Review.APPROVED)) {
      review =
          review
              .in(Review.REOPENED)
              .with(
                  new ReviewStep(
                      ReviewStep.Kind.REOPENED, person.name(), at.toString(), null, null, null));
    }
    if (kind.isPreparation()) {
      review =
          new Review(
              review.state(),
              person.name(),
              at.toString(),
              review.approvedBy(),
              review.approvedAt(),
              review.content(),
              review.ownWork(),
              review.steps());
    }
    return record.with(
        review.with(
            new ReviewStep(kind, person.name(), at.toString(), about, rule, blankToNull(remark))));
  }

  private static List<String> more(List<String> doubts, String doubt) {
    List<String> more = new ArrayList<>(doubts);
    more.add(doubt);
    return more;
  }

  private static String required(String text, String what) throws ReviewException {
    if (text == null || text.isBlank()) {
      throw new ReviewException("say " + what);
    }
    return text.strip();
  }

  private static String blankToNull(String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }
}
