package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.record.Standing;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class JsonReportTest {
  private static final Path FILE = Path.of("tl-25.pdf");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void oneCellOfOneFileIsTheRecordItself() throws JsonProcessingException {
    JsonNode json = print(true, 1);
    assertEquals("tl-25", json.path("id").asText());
  }

  @Test
  void severalCellsOfOneFileAreAnArray() throws JsonProcessingException {
    assertEquals(2, print(true, 2).size());
  }

  @Test
  void aFolderIsAnArrayEvenOfOneOrNone() throws JsonProcessingException {
    assertTrue(print(false, 1).isArray());
    out.getBuffer().setLength(0);
    assertTrue(print(false, 0).isArray());
  }

  @Test
  void remarksStayOffStandardOutput() throws JsonProcessingException {
    print(true, 1);
    assertTrue(err.toString().contains("tl-25.pdf: page 3 is a picture"), err.toString());
  }

  private JsonNode print(boolean singleFile, int cells) throws JsonProcessingException {
    JsonReport report = new JsonReport(new PrintWriter(out), new PrintWriter(err), singleFile);
    ReadReport.Written written =
        new ReadReport.Written(Records.of("tl-25", "tl-25.pdf", Standing.READ), null);
    List<String> remarks = List.of(SheetLine.pictures(List.of(3)));
    ReadCounts counts = ReadCounts.NONE;
    if (cells > 0) {
      report.sheet(FILE, Collections.nCopies(cells, written), remarks);
      counts = counts.withSheet(cells);
    }
    report.end(counts);
    return new ObjectMapper().readTree(out.toString());
  }
}
