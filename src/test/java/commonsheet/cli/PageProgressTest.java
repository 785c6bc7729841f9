package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class PageProgressTest {
  private final StringWriter err = new StringWriter();

  private PageProgress progress(boolean terminal) {
    return new PageProgress(new PrintWriter(err), terminal);
  }

  @Test
  void aTerminalShowsThePageAndIsCleanAfterwards() {
    PageProgress progress = progress(true);
    progress.recognising("scan.pdf", 3, 9);
    assertEquals("scan.pdf: recognising page 3 of 9", err.toString());
    progress.done();
    String last = err.toString().substring(err.toString().indexOf('\r') + 1);
    assertTrue(last.isBlank() && last.endsWith("\r"), last);
  }

  @Test
  void aLongNameLeavesThePageInSight() {
    progress(true).recognising("a".repeat(200) + ".pdf", 12, 30);
    assertTrue(err.toString().endsWith("\u2026: recognising page 12 of 30"));
    assertEquals(79, err.toString().length());
  }

  @Test
  void elsewhereNothingIsSaid() {
    PageProgress progress = progress(false);
    progress.recognising("scan.pdf", 3, 9);
    progress.done();
    assertEquals("", err.toString());
  }
}
