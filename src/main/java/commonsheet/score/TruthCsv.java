package commonsheet.score;

import commonsheet.record.Conditions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The rows of a truth file with fixed columns, and its faults with their line. */
final class TruthCsv {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();

  private final Path file;
  private final List<String> columns;
  private long line;
  private CSVRecord row;

  TruthCsv(Path file, List<String> columns) {
    this.file = file;
    this.columns = columns;
  }

  /** What is done with each row; it asks this object for the row's columns. */
  interface RowReader {
    void read() throws TruthException;
  }

  /** Reads the whole file; the reader is called once per row after the header. */
  void forEachRow(RowReader reader) throws TruthException {
    try (CSVParser parser = CSVParser.parse(content(), FORMAT)) {
      Iterator<CSVRecord> records = parser.iterator();
      checkHeader(next(parser, records));
      for (row = next(parser, records); row != null; row = next(parser, records)) {
        if (row.size() != columns.size()) {
          throw fault(
              "has "
                  + row.size()
                  + " columns instead of "
                  + columns.size()
                  + "; put a text that holds a comma in quotation marks");
        }
        reader.read();
      }
    } catch (IOException e) {
      throw fault("cannot be read as CSV (" + e.getMessage() + ")");
    }
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
          file, "is empty; its first line must be " + String.join(",", columns));
    }
    if (!header.toList().equals(columns)) {
      throw fault("the columns must be " + String.join(",", columns));
    }
  }

  /** The stripped text of a column of this row; null where it is blank. */
  String text(String column) {
    String text = row.get(columns.indexOf(column)).strip();
    return text.isEmpty() ? null : text;
  }

  /** The text of a column that must not be blank. */
  String needed(String column) throws TruthException {
    String text = text(column);
    if (text == null) {
      throw fault("the column " + column + " is empty");
    }
    return text;
  }

  /** The number in a column of this row; null where it is blank. */
  Double number(String column) throws TruthException {
    String printed = text(column);
    return printed == null ? null : (Double) parse(column, printed);
  }

  /** The page of this row, from 1. */
  Integer page() throws TruthException {
    String page = text("page");
    if (page == null || !page.matches("[1-9][0-9]{0,5}")) {
      throw fault("page must be a whole number from 1, not \"" + (page == null ? "" : page) + '"');
    }
    return Integer.valueOf(page);
  }

  /** The conditions of this row, written {@code name=value;name=value}. */
  Conditions conditions() throws TruthException {
    String all = text("conditions");
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

  private double parse(String what, String printed) throws TruthException {
    if (!printed.matches("[-+]?([0-9]+([.][0-9]*)?|[.][0-9]+)([eE][-+]?[0-9]{1,2})?")) {
      throw fault(what + " must be a number such as 2.5 or -20, not \"" + printed + '"');
    }
    return Double.parseDouble(printed);
  }

  /** A fault of this row. */
  TruthException fault(String problem) {
    return new TruthException(file, line, problem);
  }
}
