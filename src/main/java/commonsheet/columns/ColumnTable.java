package commonsheet.columns;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The rows of a text file below the line that names its columns. Cells are divided by commas,
 * semicolons or tabs; lines before the names are passed over; numbers have a decimal point or, all
 * through the file, a decimal comma.
 */
public final class ColumnTable implements AutoCloseable {
  /** Cyclers write a page of settings before their table, not a book. */
  private static final int MOST_LINES_BEFORE = 200;

  private static final List<Character> DIVIDERS = List.of(',', ';', '\t');
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?");
  private static final Pattern WITH_COMMA = Pattern.compile("[+-]?\\d+,\\d+([eE][+-]?\\d+)?");
  private static final Pattern WITH_POINT = Pattern.compile("[+-]?\\d+\\.\\d+([eE][+-]?\\d+)?");

  /** A line of names and how well it suits. */
  private record Head(int line, char divider, List<Heading> headings, int score) {}

  private final ColumnFile file;
  private final List<Heading> headings;
  private final boolean decimalComma;
  private final int before;
  private final CSVParser parser;
  private final Iterator<CSVRecord> records;

  private ColumnTable(ColumnFile file, Head head, boolean decimalComma) throws IOException {
    this.file = file;
    this.headings = head.headings();
    this.decimalComma = decimalComma;
    this.before = head.line();
    BufferedReader text = new BufferedReader(new BoundedLines(file.text()));
    for (int i = 0; i < before; i++) {
      text.readLine();
    }
    this.parser = format(head.divider()).parse(text);
    this.records = parser.iterator();
  }

  /**
   * A row of cells.
   *
   * @param line its line in the file, from 1
   */
  public record Row(long line, List<String> cells) {
    /** A cell; empty where the row ends before it. */
    public String cell(int column) {
      return column < cells.size() ? cells.get(column).strip() : "";
    }
  }

  /**
   * Finds the names of the columns and stands before the first row.
   *
   * @param suits how many of the wanted columns a line names; the first line that names most is
   *     taken, if it names any
   * @throws ColumnException where the file cannot be read or is no text
   */
  public static ColumnTable open(ColumnFile file, ToIntFunction<List<Heading>> suits)
      throws ColumnException {
    return open(file, Heading::of, suits);
  }

  /**
   * The same where the meaning of names is given.
   *
   * @param named what a name of a column means
   * @throws ColumnException where the file cannot be read or is no text
   */
  public static ColumnTable open(
      ColumnFile file, Function<String, Heading> named, ToIntFunction<List<Heading>> suits)
      throws ColumnException {
    try {
      List<String> lines = firstLines(file);
      Head best = new Head(0, ',', List.of(), 0);
      for (int i = 0; i < lines.size(); i++) {
        for (char divider : DIVIDERS) {
          List<Heading> headings = cells(lines.get(i), divider).stream().map(named).toList();
          int score = suits.applyAsInt(headings);
          if (score > best.score()) {
            best = new Head(i + 1, divider, headings, score);
          }
        }
      }
      return new ColumnTable(file, best, hasDecimalComma(lines, best));
    } catch (BoundedLines.TooLong tooLong) {
      throw noText(file);
    } catch (IOException | UncheckedIOException failure) {
      throw file.unreadable();
    }
  }

  /** The names of the columns; none where no line names any that is wanted. */
  public List<Heading> headings() {
    return headings;
  }

  /**
   * The next row that is not empty; null at the end.
   *
   * @throws ColumnException where the file cannot be read or is no text
   */
  public Row next() throws ColumnException {
    try {
      while (records.hasNext()) {
        CSVRecord cells = records.next();
        Row row = new Row(before + parser.getCurrentLineNumber(), cells.toList());
        if (row.cells().stream().anyMatch(cell -> !cell.isBlank())) {
          return row;
        }
      }
      return null;
    } catch (UncheckedIOException failure) {
      throw failure.getCause() instanceof BoundedLines.TooLong ? noText(file) : file.unreadable();
    }
  }

  /**
   * The number in a cell, as it stands there.
   *
   * @throws ColumnException where it is none
   */
  public double number(Row row, int column) throws ColumnException {
    String text = plain(row.cell(column));
    if (!NUMBER.matcher(text).matches()) {
      throw file.wrong(
          row.line(),
          "\""
              + row.cell(column)
              + "\" in column \""
              + headings.get(column).text()
              + "\" is no number; mend it or remove the line");
    }
    return Double.parseDouble(text);
  }

  /** How many digits a cell has behind its decimal point. */
  public int decimals(Row row, int column) {
    String text = plain(row.cell(column));
    int point = text.indexOf('.');
    return point < 0 ? 0 : text.length() - point - 1;
  }

  private String plain(String cell) {
    String text = cell.replace('−', '-');
    return decimalComma ? text.replace(',', '.') : text;
  }

  private static List<String> firstLines(ColumnFile file) throws IOException {
    List<String> lines = new ArrayList<>();
    try (BufferedReader text = new BufferedReader(new BoundedLines(file.text()))) {
      String line = text.readLine();
      while (line != null && lines.size() < MOST_LINES_BEFORE) {
        lines.add(lines.isEmpty() ? line.replace("\uFEFF", "") : line);
        line = text.readLine();
      }
    }
    return lines;
  }

  private static boolean hasDecimalComma(List<String> lines, Head head) throws IOException {
    boolean comma = false;
    for (String line : lines.subList(head.line(), lines.size())) {
      for (String cell : cells(line, head.divider())) {
        comma |= WITH_COMMA.matcher(cell.strip()).matches();
        if (WITH_POINT.matcher(cell.strip()).matches()) {
          return false;
        }
      }
    }
    return comma;
  }

  private static List<String> cells(String line, char divider) throws IOException {
    try (CSVParser parser = format(divider).parse(new StringReader(line))) {
      List<CSVRecord> rows = parser.getRecords();
      return rows.isEmpty() ? List.of() : rows.get(0).toList();
    } catch (IOException | UncheckedIOException unfinished) {
      // A lone quotation mark: no line of names.
      return List.of();
    }
  }

  private static CSVFormat format(char divider) {
    return CSVFormat.Builder.create()
        .setDelimiter(divider)
        .setQuote('"')
        .setIgnoreSurroundingSpaces(true)
        .setIgnoreEmptyLines(true)
        .get();
  }

  private static ColumnException noText(ColumnFile file) {
    return file.wrong("this is no table of text; save it as CSV");
  }

  @Override
  public void close() throws ColumnException {
    try {
      parser.close();
    } catch (IOException failure) {
      throw file.unreadable();
    }
  }
}
