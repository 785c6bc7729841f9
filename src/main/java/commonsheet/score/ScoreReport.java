package commonsheet.score;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** The scores of one or more sheets, printed for a person or for a script. Lines end with LF. */
public final class ScoreReport {
  private final List<SheetScore> scores;

  public ScoreReport(List<SheetScore> scores) {
    this.scores = List.copyOf(scores);
  }

  /** The scores, in the order given. */
  public List<SheetScore> scores() {
    return scores;
  }

  /** The counts of all sheets together. */
  public Tally total() {
    return Tally.of(outcomes());
  }

  /** The counts of all sheets together by quantity, in alphabetical order. */
  public Map<String, Tally> byQuantity() {
    return SheetScore.tallyByQuantity(outcomes());
  }

  /** One line per sheet, their total, and one line per quantity. */
  public String table() {
    return ScoreTable.text(this);
  }

  /**
   * Every wrong, missed and spurious statement and every wrong or missed cell field, with page,
   * printed text, what was expected and what was read; empty if there is none.
   */
  public String listing() {
    return ScoreListing.text(scores);
  }

  /** All of it as one JSON document in the form {@code commonsheet/score/1}; see docs/score.md. */
  public String json() {
    return ScoreJson.text(this);
  }

  List<Outcome> outcomes() {
    return scores.stream().flatMap(score -> score.outcomes().stream()).toList();
  }

  /** How many cell fields are of a kind. */
  static long count(List<FieldOutcome> fields, Predicate<Outcome.Kind> kind) {
    return fields.stream().map(FieldOutcome::kind).filter(kind).count();
  }
}
