package commonsheet.score;

import commonsheet.record.Statistic;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Reads one truth file and says in which line it does not make sense. */
final class TruthReader {
  private static final List<String> COLUMNS =
      List.of(
          "quantity", "statistic", "value", "low", "high", "unit", "conditions", "page", "text");
  private static final String CELL = "cell.";
  private static final List<String> FIELDS =
      List.of(
          "cell.maker",
          "cell.model",
          "cell.designation",
          "cell.chemistry",
          "cell.form",
          "cell.sizeCode");

  private final Path file;
  private final TruthCsv csv;
  private final List<TruthRow> rows = new ArrayList<>();
  private final List<TruthField> fields = new ArrayList<>();

  TruthReader(Path file) {
    this.file = file;
    this.csv = new TruthCsv(file, COLUMNS);
  }

  Truth read(String model) throws TruthException {
    csv.forEachRow(this::readRow);
    String name = file.getFileName().toString();
    String sheet =
        name.endsWith(Truth.SUFFIX)
            ? name.substring(0, name.length() - Truth.SUFFIX.length())
            : name;
    return new Truth(sheet, model, rows, fields);
  }

  private void readRow() throws TruthException {
    String quantity = csv.text("quantity");
    if (quantity == null) {
      throw csv.fault("names no quantity");
    }
    if (quantity.startsWith(CELL)) {
      fields.add(field(quantity));
    } else {
      rows.add(statement(quantity));
    }
  }

  private TruthField field(String name) throws TruthException {
    if (!FIELDS.contains(name)) {
      throw csv.fault("\"" + name + "\" is not one of " + String.join(", ", FIELDS));
    }
    String expected = csv.text("value");
    if (expected == null) {
      throw csv.fault(name + " has no text in the column value");
    }
    return new TruthField(name, expected, csv.page(), csv.text("text"));
  }

  private TruthRow statement(String quantity) throws TruthException {
    Double value = csv.number("value");
    Double low = csv.number("low");
    Double high = csv.number("high");
    if (value == null && low == null && high == null) {
      throw csv.fault(quantity + " has neither value nor low nor high");
    }
    if (low != null && high != null && low > high) {
      throw csv.fault("low is greater than high");
    }
    String unit = csv.text("unit");
    if (unit == null) {
      throw csv.fault(quantity + " has no unit");
    }
    return new TruthRow(
        quantity,
        statistic(),
        value,
        low,
        high,
        unit,
        csv.conditions(),
        csv.page(),
        csv.text("text"));
  }

  private Statistic statistic() throws TruthException {
    String name = csv.text("statistic");
    if (name == null) {
      return null;
    }
    for (Statistic statistic : Statistic.values()) {
      if (statistic.label().equals(name)) {
        return statistic;
      }
    }
    List<String> known = Arrays.stream(Statistic.values()).map(Statistic::label).toList();
    throw csv.fault("statistic \"" + name + "\" is not one of " + String.join(", ", known));
  }
}
