package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceCMYK;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Paths of a page as they can be seen. Pages are 400 by 600 points, y of the content upwards. */
class DrawingTest {
  @TempDir Path folder;

  private PageDrawing drawing(Drawn sheet) throws SheetException {
    try (OpenSheet open = OpenSheet.open(sheet.save(folder))) {
      return open.drawing(1);
    }
  }

  private DrawnPath only(Drawn sheet) throws SheetException {
    PageDrawing drawing = drawing(sheet);
    assertEquals(1, drawing.paths().size());
    return drawing.paths().get(0);
  }

  private static void assertPoint(double x, double y, Point actual) {
    assertEquals(x, actual.x(), 0.02);
    assertEquals(y, actual.y(), 0.02);
  }

  @Test
  void lineIsCutWhereItsClipEnds() throws SheetException {
    Drawn sheet = new Drawn();
    sheet.quietly(
        () -> {
          sheet.content().addRect(100, 100, 100, 100);
          sheet.content().clip();
          sheet.content().moveTo(50, 150);
          sheet.content().lineTo(150, 150);
          sheet.content().lineTo(150, 450);
          sheet.content().lineTo(160, 450);
          sheet.content().lineTo(160, 150);
          sheet.content().stroke();
        });
    DrawnPath path = only(sheet);
    assertEquals(2, path.runs().size());
    assertPoint(100, 450, path.runs().get(0).get(0));
    assertPoint(150, 450, path.runs().get(0).get(1));
    assertPoint(150, 400, path.runs().get(0).get(2));
    assertPoint(160, 400, path.runs().get(1).get(0));
    assertPoint(160, 450, path.runs().get(1).get(1));
  }

  @Test
  void areaIsCutToItsClip() throws SheetException {
    Drawn sheet = new Drawn();
    sheet.quietly(
        () -> {
          sheet.content().addRect(100, 100, 100, 100);
          sheet.content().clip();
          sheet.content().addRect(150, 150, 100, 100);
          sheet.content().fill();
        });
    DrawnPath path = only(sheet);
    assertTrue(path.filled());
    Box bounds =
        Box.around(path.runs().get(0).stream().map(p -> new Box(p.x(), p.y(), 0, 0)).toList());
    assertEquals(new Box(150, 400, 50, 50), bounds);
  }

  @Test
  void widthAndDashAreThoseDisplayed() throws SheetException {
    Drawn sheet = new Drawn();
    sheet.quietly(
        () -> {
          sheet.content().transform(new Matrix(AffineTransform.getScaleInstance(0.5, 0.5)));
          sheet.content().setLineWidth(2);
          sheet.content().setLineDashPattern(new float[] {6, 4}, 0);
          sheet.content().moveTo(100, 100);
          sheet.content().lineTo(300, 100);
          sheet.content().stroke();
        });
    DrawnPath path = only(sheet);
    assertEquals(1, path.width(), 1e-6);
    assertEquals(List.of(3.0, 2.0), path.dash());
    assertPoint(150, 550, path.runs().get(0).get(1));
  }

  @Test
  void curveIsResolvedToAHundredthOfAPoint() throws SheetException {
    // Four cubic curves with control points at 0.5523 of the radius stay within 0.03 % of a circle
    // (common practice, no source).
    double k = 0.5522847;
    Drawn sheet = new Drawn();
    sheet.quietly(
        () -> {
          sheet.content().moveTo(300, 300);
          sheet
              .content()
              .curveTo(300, (float) (300 + 100 * k), (float) (200 + 100 * k), 400, 200, 400);
          sheet.content().stroke();
        });
    List<Point> run = only(sheet).runs().get(0);
    for (int i = 0; i < run.size(); i++) {
      assertEquals(100, run.get(i).distance(new Point(200, 300)), 0.04);
      if (i > 0) {
        Point middle =
            new Point(
                (run.get(i).x() + run.get(i - 1).x()) / 2,
                (run.get(i).y() + run.get(i - 1).y()) / 2);
        assertEquals(100, middle.distance(new Point(200, 300)), 0.04);
      }
    }
  }

  @Test
  void colourOfFourInks() throws SheetException {
    Drawn sheet = new Drawn();
    sheet.quietly(
        () -> {
          sheet
              .content()
              .setStrokingColor(new PDColor(new float[] {0, 1, 1, 0}, PDDeviceCMYK.INSTANCE));
          sheet.content().moveTo(10, 10);
          sheet.content().lineTo(20, 20);
          sheet.content().stroke();
        });
    assertEquals(0xFF0000, only(sheet).rgb());
  }

  @Test
  void hiddenLayerIsLeftOut() throws SheetException {
    Drawn sheet = new Drawn();
    sheet.quietly(
        () -> {
          PDOptionalContentProperties layers = new PDOptionalContentProperties();
          PDOptionalContentGroup layer = new PDOptionalContentGroup("draft");
          layers.addGroup(layer);
          layers.setGroupEnabled(layer, false);
          sheet.document().getDocumentCatalog().setOCProperties(layers);
          sheet.content().beginMarkedContent(COSName.OC, layer);
          sheet.content().moveTo(10, 10);
          sheet.content().lineTo(200, 200);
          sheet.content().stroke();
          sheet.content().endMarkedContent();
        });
    assertEquals(List.of(), drawing(sheet).paths());
  }

  @Test
  void sidewaysPageIsDrawnAsItIsRead() throws SheetException {
    Drawn sheet = new Drawn();
    for (int i = 0; i < 5; i++) {
      sheet.text(100 + 15 * i, 300, 10, PDType1Font.HELVETICA, 90, "Mass");
    }
    sheet.line(50, 500, 50, 100);
    PageDrawing drawing = drawing(sheet);
    assertEquals(600, drawing.width(), 1e-6);
    List<Point> run = drawing.paths().get(0).runs().get(0);
    assertPoint(100, 50, run.get(0));
    assertPoint(500, 50, run.get(1));
  }

  @Test
  void laterPathHasTheHigherOrder() throws SheetException {
    Drawn sheet = new Drawn();
    sheet.quietly(() -> sheet.content().setNonStrokingColor(Color.RED));
    sheet.filled(10, 10, 100, 100, 0.5).line(10, 10, 100, 100);
    List<DrawnPath> paths = drawing(sheet).paths();
    assertTrue(paths.get(0).filled());
    assertTrue(paths.get(0).order() < paths.get(1).order());
  }
}
