package commonsheet.score;

import commonsheet.record.Conditions;
import commonsheet.record.Statistic;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

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
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();

  private final Path file;
  private final List<TruthRow> rows = new ArrayList<>();
  private final List<TruthField> fields = new ArrayList<>();
  private long line;

  TruthReader(Path file) {
    this.file = file;
  }

  Truth read(String model) throws TruthException {
    try (CSVParser parser = CSVParser.parse(content(), FORMAT)) {
      Iterator<CSVRecord> records = parser.iterator();
      checkHeader(next(parser, records));
      for (CSVRecord row = next(parser, records); row != null; row = next(parser, records)) {
        readRow(row);
      }
    } catch (IOException e) {
      throw fault("cannot be read as CSV (" + e.getMessage() + ")");
    }
    String name = file.getFileName().toString();
    String sheet =
        name.endsWith(Truth.SUFFIX)
            ? name.substring(0, name.length() - Truth.SUFFIX.length())
            : name;
    return new Truth(sheet, model, rows, fields);
  }

  private String content() throws TruthException {
    try {
      String text = Files.readString(file);
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (NoSuchFileException e) {
      throw new TruthException(file, "there is no such truth file");
    } catch (CharacterCodingException e) {
      throw new TruthException(file, "is not UTF-8 text; save it as UTF-8");
    } catch (IOException e) {
      throw new TruthException(file, "cannot be read (" + e.getMessage() + ")");
    }
  }

  /** The next record, or null; leaves in {@link #line} the line on which it begins. */
  private CSVRecord next(CSVParser parser, Iterator<CSVRecord> records) throws TruthException {
    line = parser.getCurrentLineNumber() + 1;
    try {
      if (!records.hasNext()) {
        return null;
      }
      CSVRecord record = records.next();
      long within = record.stream().flatMapToInt(String::chars).filter(c -> c == '\n').count();
      line = parser.getCurrentLineNumber() - within;
      return record;
    } catch (UncheckedIOException e) {
      throw fault("a quotation mark is not closed or stands in the wrong place");
    }
  }

  private void checkHeader(CSVRecord header) throws TruthException {
    if (header == null) {
      throw new TruthException(
          file, "is empty; its first line must be " + String.join(",", COLUMNS));
    }
    if (!header.toList().equals(COLUMNS)) {
      throw fault("the columns must be " + String.join(",", COLUMNS));
    }
  }

  private void readRow(CSVRecord row) throws TruthException {
    if (row.size() != COLUMNS.size()) {
      throw fault(
          "has "
              + row.size()
              + " columns instead of "
              + COLUMNS.size()
              + "; put a text that holds a comma in quotation marks");
    }
    String quantity = text(row, "quantity");
    if (quantity == null) {
      throw fault("names no quantity");
    }
    if (quantity.startsWith(CELL)) {
      fields.add(field(quantity, row));
    } else {
      rows.add(statement(quantity, row));
    }
  }

  private TruthField field(String name, CSVRecord row) throws TruthException {
    if (!FIELDS.contains(name)) {
      throw fault("\"" + name + "\" is not one of " + String.join(", ", FIELDS));
    }
    String expected = text(row, "value");
    if (expected == null) {
      throw fault(name + " has no text in the column value");
    }
    return new TruthField(name, expected, page(row), text(row, "text"));
  }

  private TruthRow statement(String quantity, CSVRecord row) throws TruthException {
    Double value = number(row, "value");
    Double low = number(row, "low");
    Double high = number(row, "high");
    if (value == null && low == null && high == null) {
      throw fault(quantity + " has neither value nor low nor high");
    }
    if (low != null && high != null && low > high) {
      throw fault("low is greater than high");
    }
    String unit = text(row, "unit");
    if (unit == null) {
      throw fault(quantity + " has no unit");
    }
    return new TruthRow(
        quantity,
        statistic(row),
        value,
        low,
        high,
        unit,
        conditions(row),
        page(row),
        text(row, "text"));
  }

  private Statistic statistic(CSVRecord row) throws TruthException {
    String name = text(row, "statistic");
    if (name == null) {
      return null;
    }
    for (Statistic statistic : Statistic.values()) {
      if (statistic.label().equals(name)) {
        return statistic;
      }
    }
    List<String> known = Arrays.stream(Statistic.values()).map(Statistic::label).toList();
    throw fault("statistic \"" + name + "\" is not one of " + String.join(", ", known));
  }

  private Conditions conditions(CSVRecord row) throws TruthException {
    String all = text(row, "conditions");
    if (all == null) {
      return Conditions.NONE;
    }
    Map<String, Double> values = new LinkedHashMap<>();
    for (String one : all.split(";")) {
      int equals = one.indexOf('=');
      if (equals < 0) {
        throw fault("condition \"" + one.strip() + "\" is not of the form name=value");
      }
      String name = one.substring(0, equals).strip();
      if (values.put(name, parse("condition " + name, one.substring(equals + 1).strip())) != null) {
        throw fault("condition " + name + " stands twice");
      }
    }
    try {
      return new Conditions(values);
    } catch (IllegalArgumentException e) {
      throw fault(e.getMessage());
    }
  }

  private Integer page(CSVRecord row) throws TruthException {
    String page = text(row, "page");
    if (page == null || !page.matches("[1-9][0-9]{0,5}")) {
      throw fault("page must be a whole number from 1, not \"" + (page == null ? "" : page) + '"');
    }
    return Integer.valueOf(page);
  }

  private Double number(CSVRecord row, String column) throws TruthException {
    String printed = text(row, column);
    return printed == null ? null : (Double) parse(column, printed);
  }

  private double parse(String what, String printed) throws TruthException {
    if (!printed.matches("[-+]?([0-9]+([.][0-9]*)?|[.][0-9]+)([eE][-+]?[0-9]{1,2})?")) {
      throw fault(what + " must be a number such as 2.5 or -20, not \"" + printed + '"');
    }
    return Double.parseDouble(printed);
  }

  /** The stripped text of a column; null where it is blank. */
  private static String text(CSVRecord row, String column) {
    String text = row.get(COLUMNS.indexOf(column)).strip();
    return text.isEmpty() ? null : text;
  }

  private TruthException fault(String problem) {
    return new TruthException(file, line, problem);
  }
}
