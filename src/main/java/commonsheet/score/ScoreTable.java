package commonsheet.score;

import commonsheet.record.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The scores as tables of plain text: names to the left, numbers to the right. */
final class ScoreTable {
  private static final List<String> COUNTS =
      List.of("truth", "right", "wrong", "missed", "spurious", "repeated");
  private static final List<String> RATIOS = List.of("recall", "precision", "of read", "of unsure");

  private ScoreTable() {}

  static String text(ScoreReport report) {
    List<List<String>> sheets = new ArrayList<>();
    sheets.add(header("sheet", "cell"));
    for (SheetScore score : report.scores()) {
      sheets.add(line(score.sheet(), score.tally(), cell(score.fields())));
    }
    sheets.add(List.of());
    List<FieldOutcome> fields =
        report.scores().stream().flatMap(score -> score.fields().stream()).toList();
    sheets.add(line("all sheets", report.total(), cell(fields)));

    List<List<String>> quantities = new ArrayList<>();
    quantities.add(header("quantity"));
    report.byQuantity().forEach((name, tally) -> quantities.add(line(name, tally)));
    return align(sheets) + '\n' + align(quantities) + '\n' + NOTE;
  }

  private static final String NOTE =
      """
      missed: truth rows no statement is right for, those read wrongly among them
      spurious: statements the sheet does not make, those repeating a right one among them
      precision: right of right, wrong and spurious; of read, of unsure: the same by standing
      cell: maker, model, chemistry and the like, right of those the sheet names
      """;

  private static List<String> header(String name, String... last) {
    List<String> header = new ArrayList<>(List.of(name));
    header.addAll(COUNTS);
    header.addAll(RATIOS);
    header.addAll(List.of(last));
    return header;
  }

  private static List<String> line(String name, Tally tally, String... last) {
    List<String> line = new ArrayList<>(List.of(name));
    line.add(Integer.toString(tally.truthRows()));
    line.add(Integer.toString(tally.right()));
    line.add(Integer.toString(tally.wrong()));
    line.add(Integer.toString(tally.missed()));
    line.add(Integer.toString(tally.spurious()));
    line.add(Integer.toString(tally.repeated()));
    line.add(ratio(tally.recall()));
    line.add(ratio(tally.precision()));
    line.add(ratio(tally.of(Standing.READ).ratio()));
    line.add(ratio(tally.of(Standing.UNSURE).ratio()));
    line.addAll(List.of(last));
    return line;
  }

  private static String cell(List<FieldOutcome> fields) {
    return ScoreReport.count(fields, Outcome.Kind.RIGHT::equals) + "/" + fields.size();
  }

  private static String ratio(OptionalDouble ratio) {
    // Cut off, not rounded: 0.9996 must not look like a perfect score.
    return ratio.isEmpty()
        ? "-"
        : String.format(Locale.ROOT, "%.3f", Math.floor(ratio.getAsDouble() * 1000 + 1e-9) / 1000);
  }

  /** Lines as one text, names to the left, numbers to the right. */
  static String align(List<List<String>> lines) {
    int[] widths = new int[lines.get(0).size()];
    for (List<String> line : lines) {
      for (int i = 0; i < line.size(); i++) {
        widths[i] = Math.max(widths[i], line.get(i).length());
      }
    }
    StringBuilder text = new StringBuilder();
    for (List<String> line : lines) {
      for (int i = 0; i < line.size(); i++) {
        String pad = " ".repeat(widths[i] - line.get(i).length());
        text.append(i == 0 ? line.get(i) + pad : "  " + pad + line.get(i));
      }
      text.append('\n');
    }
    return text.toString();
  }
}
