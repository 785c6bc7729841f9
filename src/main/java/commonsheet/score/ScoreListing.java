package commonsheet.score;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.Conditions;
import commonsheet.record.Evidence;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import java.util.stream.Collectors;

/** What went wrong, statement by statement, for the person who mends a rule. */
final class ScoreListing {
  private final StringBuilder text = new StringBuilder();

  private ScoreListing() {}

  static String text(List<SheetScore> scores) {
    ScoreListing listing = new ScoreListing();
    scores.forEach(listing::sheet);
    return listing.text.toString();
  }

  private void sheet(SheetScore score) {
    int before = text.length();
    score.fields().forEach(this::field);
    for (Outcome.Kind kind : Outcome.Kind.values()) {
      score.outcomes().stream().filter(o -> o.kind() == kind).forEach(this::outcome);
    }
    if (text.length() > before) {
      text.insert(before, (before == 0 ? "" : "\n") + score.sheet() + '\n');
    }
  }

  private void field(FieldOutcome field) {
    TruthField expected = field.expected();
    if (field.kind() != Outcome.Kind.RIGHT) {
      line("  ", field.kind().label() + ' ' + expected.name());
      line("    expected  ", expected.expected() + place(expected.page(), expected.text()));
      if (field.read() != null) {
        line("    read      ", field.read());
      }
    }
  }

  private void outcome(Outcome outcome) {
    switch (outcome.kind()) {
      case RIGHT -> {}
      case WRONG -> {
        line("  ", "wrong " + outcome.quantity() + ": " + join(outcome.differences()));
        expected("    expected  ", outcome.expected());
        read(outcome.read());
      }
      case MISSED -> {
        line("  ", "missed " + outcome.quantity());
        expected("    expected  ", outcome.expected());
      }
      case SPURIOUS -> {
        line("  ", "spurious " + outcome.quantity());
        read(outcome.read());
      }
      case REPEATED -> {
        line("  ", "spurious " + outcome.quantity() + ": says again what another says rightly");
        expected("    repeats   ", outcome.expected());
        read(outcome.read());
      }
    }
  }

  private void expected(String start, TruthRow row) {
    line(
        start,
        says(row.statistic(), row.value(), row.low(), row.high(), row.unit(), row.conditions())
            + place(row.page(), row.text()));
  }

  private void read(Statement read) {
    Evidence evidence = read.evidence();
    String rule = evidence == null || evidence.rule() == null ? "" : " by " + evidence.rule();
    line(
        "    read      ",
        says(
                read.statistic(),
                read.value(),
                read.low(),
                read.high(),
                read.unit(),
                read.conditions())
            + (evidence == null ? "" : place(evidence.page(), evidence.text())));
    line("              ", read.id() + ", " + read.standing().label() + rule);
    read.doubts().forEach(doubt -> line("              ", "doubt: " + doubt));
  }

  private void line(String start, String content) {
    text.append(start).append(onOneLine(content)).append('\n');
  }

  /** Printed words come from a file of unknown origin: kept on the line and off the terminal. */
  static String onOneLine(String content) {
    return content.replaceAll("[\\p{Cntrl}\\s]+", " ");
  }

  private static String says(
      Statistic statistic,
      Double value,
      Double low,
      Double high,
      String unit,
      Conditions conditions) {
    StringBuilder says = new StringBuilder();
    if (statistic != null) {
      says.append(statistic.label()).append(' ');
    }
    if (value != null) {
      says.append(PlainNumber.of(value, Agreement.DIGITS)).append(' ');
    }
    if (low != null || high != null) {
      String bounds = bound(low) + " to " + bound(high);
      says.append(value == null ? bounds : '(' + bounds + ')').append(' ');
    }
    says.append(unit);
    conditions
        .values()
        .forEach(
            (name, number) ->
                says.append("; " + name + '=' + PlainNumber.of(number, Agreement.DIGITS)));
    return says.toString();
  }

  private static String bound(Double bound) {
    return bound == null ? "?" : PlainNumber.of(bound, Agreement.DIGITS);
  }

  private static String place(Integer page, String words) {
    return (page == null ? "" : " | page " + page) + (words == null ? "" : " | " + words);
  }

  private static String join(List<Difference> differences) {
    return differences.stream().map(Difference::toString).collect(Collectors.joining(", "));
  }
}
