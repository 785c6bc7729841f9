package commonsheet.score;

import commonsheet.record.Curve;
import java.util.List;
import java.util.stream.Collectors;

/** Every curve that is not right, chart by chart. */
final class ChartListing {
  private final StringBuilder text = new StringBuilder();

  private ChartListing() {}

  static String text(List<ChartScore> scores) {
    ChartListing listing = new ChartListing();
    scores.forEach(listing::sheet);
    return listing.text.toString();
  }

  private void sheet(ChartScore score) {
    int before = text.length();
    score.charts().forEach(this::chart);
    score.spurious().forEach(this::curve);
    if (text.length() > before) {
      text.insert(before, (before == 0 ? "" : "\n") + score.sheet() + '\n');
    }
  }

  private void chart(ChartOutcome chart) {
    if (!chart.whole()) {
      ChartTruth expected = chart.expected();
      line(
          "  ",
          (chart.found() ? "" : "missed ")
              + expected.kind()
              + " \""
              + expected.name()
              + "\", page "
              + expected.page());
      if (chart.found()) {
        chart.curves().forEach(this::curve);
      }
    }
  }

  private void curve(CurveOutcome outcome) {
    switch (outcome.kind()) {
      case RIGHT -> {}
      case WRONG -> {
        String differences =
            outcome.differences().stream()
                .map(Difference::toString)
                .collect(Collectors.joining(", "));
        line("    ", "wrong curve " + label(outcome.expected()) + ": " + differences);
        read(outcome.read());
      }
      case MISSED -> line("    ", "missed curve " + label(outcome.expected()));
      case SPURIOUS -> {
        line("    ", "spurious curve");
        read(outcome.read());
      }
    }
  }

  private void read(Curve curve) {
    String label = curve.label() == null ? "without a label" : '"' + curve.label() + '"';
    String what = curve.kind() + ", " + curve.y().quantity() + " over " + curve.x().quantity();
    line("      ", curve.id() + ' ' + label + ", " + what + ", " + curve.standing().label());
    curve.doubts().forEach(doubt -> line("      ", "doubt: " + doubt));
  }

  private static String label(CurveTruth curve) {
    return curve.label() == null ? "of " + curve.y().quantity() : '"' + curve.label() + '"';
  }

  private void line(String start, String content) {
    text.append(start).append(ScoreListing.onOneLine(content)).append('\n');
  }
}
