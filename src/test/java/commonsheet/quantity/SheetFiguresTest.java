package commonsheet.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * The words of published sheets against the values that a person read in them; needs the folder of
 * real sheets.
 */
class SheetFiguresTest {
  private final FigureParser parser = new FigureParser(NumberStyle.DECIMAL_POINT);

  @Test
  void everyPrintedValueIsAmongTheFigures() throws IOException {
    String folder = System.getProperty("sheets", "");
    assumeTrue(!folder.isBlank(), "no folder of real sheets given (-Dsheets=DIR)");
    List<String> unread = new ArrayList<>();
    try (DirectoryStream<Path> truths = Files.newDirectoryStream(Path.of(folder), "*.truth.csv")) {
      for (Path truth : truths) {
        unread.addAll(unreadIn(truth));
      }
    }
    assertEquals(List.of(), unread);
  }

  private List<String> unreadIn(Path truth) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    List<String> unread = new ArrayList<>();
    try (CSVParser rows = CSVParser.parse(truth, java.nio.charset.StandardCharsets.UTF_8, format)) {
      for (CSVRecord row : rows) {
        if (!row.get("quantity").startsWith("cell.") && !isPrinted(row)) {
          unread.add(truth.getFileName() + ": " + row.get("quantity") + " in " + row.get("text"));
        }
      }
    }
    return unread;
  }

  /**
   * A current printed as a rate, or with the unit of a charge, is the reader's to make amperes of.
   */
  private boolean isPrinted(CSVRecord row) {
    for (Figure figure : parser.find(row.get("text"))) {
      boolean current = row.get("unit").equals("A");
      Dimension dimension = figure.unit() == null ? null : figure.unit().dimension();
      if (current && (dimension == Dimension.RATE || dimension == Dimension.CHARGE)) {
        return true;
      }
      if (!figure.ambiguous() && agrees(row, figure)) {
        return true;
      }
    }
    return false;
  }

  private static boolean agrees(CSVRecord row, Figure figure) {
    Figure converted;
    try {
      converted = figure.unit() == null ? figure : figure.in(row.get("unit"));
    } catch (IllegalArgumentException otherDimension) {
      return false;
    }
    return agree(row.get("value"), converted.value())
        && (row.get("low").isEmpty() || agree(row.get("low"), converted.low()))
        && (row.get("high").isEmpty() || agree(row.get("high"), converted.high()));
  }

  private static boolean agree(String truth, Double number) {
    if (truth.isEmpty() || number == null) {
      return truth.isEmpty() && number == null;
    }
    return Math.abs(Double.parseDouble(truth) - number) <= 1e-9 * Math.max(1, Math.abs(number));
  }
}
