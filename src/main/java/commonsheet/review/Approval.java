package commonsheet.review;

import commonsheet.record.CellRecord;
import commonsheet.record.ContentHash;
import commonsheet.record.Finding;
import commonsheet.record.Review;
import commonsheet.record.ReviewStep;
import commonsheet.record.Severity;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Approving a record, and whether an approval holds. */
public final class Approval {
  private static final int NAMED = 8;

  private Approval() {}

  /** What stands in the way of approving a record, one sentence each; empty where nothing does. */
  public static List<String> obstacles(CellRecord record) {
    Progress progress = Progress.of(record);
    List<String> obstacles = new ArrayList<>();
    List<String> unsettled = progress.unsettled();
    if (record.statements().isEmpty() && record.curves().isEmpty()) {
      obstacles.add("it says nothing of its cell");
    }
    if (!unsettled.isEmpty()) {
      obstacles.add(
          "nobody has settled "
              + String.join(", ", unsettled.subList(0, Math.min(NAMED, unsettled.size())))
              + (unsettled.size() > NAMED ? " and " + (unsettled.size() - NAMED) + " more" : ""));
    }
    for (Finding finding : progress.open(Severity.ERROR)) {
      obstacles.add("an error is open, " + finding.rule() + ": " + finding.message());
    }
    return obstacles;
  }

  /** Whether a person has worked on a record, so that approving it would be approving their own. */
  public static boolean isOwnWork(CellRecord record, Person person) {
    return preparers(record.review()).anyMatch(person::is);
  }

  /** Everyone who has worked on a record, each once, in the order in which they first did. */
  public static List<String> preparers(CellRecord record) {
    List<String> once = new ArrayList<>();
    preparers(record.review())
        .filter(name -> once.stream().noneMatch(new Person(name)::is))
        .forEach(once::add);
    return List.copyOf(once);
  }

  private static Stream<String> preparers(Review review) {
    return Stream.concat(
        Stream.ofNullable(review.preparedBy()),
        review.steps().stream().filter(step -> step.step().isPreparation()).map(ReviewStep::by));
  }

  /**
   * The record as approved.
   *
   * @param ownWork whether the person says that they approve what they prepared themselves
   * @throws ReviewException where something stands in the way, or the person prepared the record
   *     and does not say so
   */
  public static CellRecord given(CellRecord record, Person person, boolean ownWork, Instant at)
      throws ReviewException {
    List<String> obstacles = obstacles(record);
    if (!obstacles.isEmpty()) {
      throw new ReviewException(
          "the record \"" + record.id() + "\" is not approved: " + String.join("; ", obstacles));
    }
    boolean own = isOwnWork(record, person);
    if (own && !ownWork) {
      throw new ReviewException(
          "the record \""
              + record.id()
              + "\" is not approved: "
              + person.name()
              + " prepared it; let another person approve it, or say --own-work, which is"
              + " recorded");
    }
    Review before = record.review();
    String time = at.truncatedTo(ChronoUnit.SECONDS).toString();
    Review review =
        new Review(
                Review.APPROVED,
                before.preparedBy(),
                before.preparedAt(),
                person.name(),
                time,
                ContentHash.of(record),
                own ? Boolean.TRUE : null,
                before.steps())
            .with(new ReviewStep(ReviewStep.Kind.APPROVED, person.name(), time, null, null, null));
    return record.with(review);
  }

  /**
   * What is wrong with the approval of a record, one sentence each; empty for one that holds and
   * for a draft, which claims nothing.
   */
  public static List<String> faults(CellRecord record) {
    Review review = record.review();
    List<String> faults = new ArrayList<>();
    if (review.state().equals(Review.DRAFT_STATE)) {
      return faults;
    }
    if (!ContentHash.of(record).equals(review.content())) {
      faults.add(
          "its content has changed since "
              + review.approvedBy()
              + " approved it at "
              + review.approvedAt());
    } else if (review.state().equals(Review.REOPENED)) {
      faults.add("it was reopened and has not been approved since");
    }
    if (review.state().equals(Review.APPROVED)) {
      faults.addAll(obstacles(record));
      boolean own = isOwnWork(record, new Person(review.approvedBy()));
      if (own && !Boolean.TRUE.equals(review.ownWork())) {
        faults.add(review.approvedBy() + " prepared it, approved it, and did not say so");
      }
    }
    return faults;
  }
}
