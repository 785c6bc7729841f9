package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which pages are worth looking at for charts. */
class ChartPagesTest {
  @TempDir private Path folder;

  private interface Drawing {
    void on(PDPageContentStream content, int page) throws IOException;
  }

  @Test
  void aPageOfRulesAndTextShowsNoChart() throws Exception {
    assertEquals(
        List.of(false),
        pages(
            1,
            (content, page) -> {
              for (int i = 0; i < 30; i++) {
                line(content, 50, 100 + 20 * i, 500, 100 + 20 * i);
                line(content, 50 + 15 * i, 100, 50 + 15 * i, 680);
              }
            }));
  }

  @Test
  void oneSlantedLineOfAChartsLengthIsEnough() throws Exception {
    assertEquals(
        List.of(true),
        pages(
            1,
            (content, page) -> {
              content.moveTo(100, 500);
              content.lineTo(250, 480);
              content.lineTo(300, 400);
              content.stroke();
            }));
  }

  @Test
  void aChartOfTinySegmentsIsSeen() throws Exception {
    assertEquals(
        List.of(true),
        pages(
            1,
            (content, page) -> {
              for (int i = 0; i < 100; i++) {
                line(content, 100 + 2 * i, 500 - i, 102 + 2 * i, 499 - i);
              }
            }));
  }

  @Test
  void smallSignsAreNoCharts() throws Exception {
    assertEquals(
        List.of(false),
        pages(
            1,
            (content, page) -> {
              for (int i = 0; i < 6; i++) {
                line(content, 100 + 60 * i, 500, 130 + 60 * i, 530);
              }
            }));
  }

  @Test
  void whatMostPagesHaveAtOnePlaceIsTheirBackground() throws Exception {
    assertEquals(
        List.of(false, false, true, false),
        pages(
            4,
            (content, page) -> {
              line(content, 50, 700, 300, 820);
              if (page == 3) {
                line(content, 100, 300, 300, 500);
              }
            }));
  }

  private List<Boolean> pages(int count, Drawing drawing) throws Exception {
    Path file = folder.resolve("sheet.pdf");
    try (PDDocument document = new PDDocument()) {
      for (int page = 1; page <= count; page++) {
        PDPage blank = new PDPage();
        document.addPage(blank);
        try (PDPageContentStream content = new PDPageContentStream(document, blank)) {
          drawing.on(content, page);
        }
      }
      document.save(file.toFile());
    }
    return SheetReader.read(file).pages().stream().map(Page::mayShowChart).toList();
  }

  private static void line(PDPageContentStream content, float x1, float y1, float x2, float y2)
      throws IOException {
    content.moveTo(x1, y1);
    content.lineTo(x2, y2);
    content.stroke();
  }
}
