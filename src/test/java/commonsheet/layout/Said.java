package commonsheet.layout;

import commonsheet.record.CellRecord;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.sheet.Sheet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * What was read from a sheet, in short: {@code "maximum 45 {temperature=23} ?"}, a range as {@code
 * "-20..60"}, a tolerance as {@code "4.2 (4.15..4.25)"}; a question mark for what is unsure.
 */
record Said(Reading reading) {
  private static final RecordReader READER = reader();

  private static RecordReader reader() {
    try {
      return new RecordReader(LayoutLibrary.load(null));
    } catch (LayoutException e) {
      throw new IllegalStateException(e);
    }
  }

  static Said on(Pages... pages) {
    return on(Pages.sheet(pages));
  }

  static Said on(Sheet sheet) {
    return new Said(READER.read(sheet));
  }

  CellRecord record() {
    if (reading.records().size() != 1) {
      throw new AssertionError(reading.records().size() + " records: " + reading.reason());
    }
    return reading.records().get(0);
  }

  CellRecord record(String model) {
    return reading.records().stream()
        .filter(record -> model.equals(record.cell().model()))
        .findFirst()
        .orElseThrow(() -> new AssertionError(model + " is not among " + reading.records()));
  }

  /** What the one record says of a quantity, in the order of the sheet. */
  List<String> of(String quantity) {
    return of(record(), quantity);
  }

  static List<String> of(CellRecord record, String quantity) {
    return statements(record, quantity).stream().map(Said::inShort).toList();
  }

  List<String> doubts(String quantity) {
    return statements(record(), quantity).stream().flatMap(s -> s.doubts().stream()).toList();
  }

  List<String> notes(String quantity) {
    return statements(record(), quantity).stream().map(s -> s.evidence().note()).toList();
  }

  static List<Statement> statements(CellRecord record, String quantity) {
    return record.statements().stream().filter(s -> s.quantity().equals(quantity)).toList();
  }

  static String inShort(Statement s) {
    StringBuilder text = new StringBuilder();
    text.append(s.statistic() == null ? "" : s.statistic().label() + " ");
    text.append(s.value() == null ? "" : number(s.value()));
    if (s.low() != null || s.high() != null) {
      String range = number(s.low()) + ".." + number(s.high());
      text.append(s.value() == null ? range : " (" + range + ")");
    }
    if (!s.conditions().isEmpty()) {
      text.append(
          s.conditions().values().entrySet().stream()
              .map(e -> e.getKey() + "=" + number(e.getValue()))
              .collect(Collectors.joining(", ", " {", "}")));
    }
    return text.append(s.standing() == Standing.UNSURE ? " ?" : "").toString();
  }

  private static String number(Double number) {
    if (number == null) {
      return "";
    }
    String text = String.format(Locale.ROOT, "%.4f", number);
    return text.replaceFirst("\\.?0+$", "");
  }
}
