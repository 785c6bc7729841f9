package commonsheet.score;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** The scores of one or more sheets, printed for a person or for a script. Lines end with LF. */
public final class ScoreReport {
  private final List<SheetScore> scores;
  private final List<ChartScore> charts;

  public ScoreReport(List<SheetScore> scores) {
    this(scores, List.of());
  }

  /**
   * @param charts of the sheets whose charts have a truth
   */
  public ScoreReport(List<SheetScore> scores, List<ChartScore> charts) {
    this.scores = List.copyOf(scores);
    this.charts = List.copyOf(charts);
  }

  /** The scores, in the order given. */
  public List<SheetScore> scores() {
    return scores;
  }

  /** The scores of the charts, in the order given; empty where no sheet has a truth of them. */
  public List<ChartScore> charts() {
    return charts;
  }

  /** The counts of all sheets together. */
  public Tally total() {
    return Tally.of(outcomes());
  }

  /** The counts of all sheets together by quantity, in alphabetical order. */
  public Map<String, Tally> byQuantity() {
    return SheetScore.tallyByQuantity(outcomes());
  }

  /**
   * One line per sheet, their total, and one line per quantity; where charts are scored, also one
   * line per sheet with charts.
   */
  public String table() {
    return charts.isEmpty()
        ? ScoreTable.text(this)
        : ScoreTable.text(this) + '\n' + ChartTable.text(charts);
  }

  /**
   * Every wrong, missed and spurious statement and every wrong or missed cell field, with page,
   * printed text, what was expected and what was read, then every curve that is not right; empty if
   * there is none.
   */
  public String listing() {
    String statements = ScoreListing.text(scores);
    String curves = ChartListing.text(charts);
    return statements.isEmpty() || curves.isEmpty()
        ? statements + curves
        : statements + '\n' + curves;
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
