package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each test guards one way in which characters are put on a page. */
class WordsTest {
  @TempDir Path folder;

  @Test
  void wordStandsWhereItIsPrinted() throws SheetException {
    Word word = words(Drawn.sheet().text(50, 100, 10, "Mass").readPage(folder)).get(0);
    // Widths of Helvetica's letters M, a, s, s: 833, 556, 500, 500 (Adobe font metrics).
    assertEquals(50, word.box().x(), 0.01);
    assertEquals(23.89, word.box().width(), 0.01);
    assertTrue(word.box().contains(55, 97));
    assertEquals(10, word.size(), 0.01);
    assertFalse(word.bold());
  }

  @Test
  void gapsPartWordsWithoutASpaceDrawn() throws SheetException {
    Page page = Drawn.sheet().text(50, 100, 10, "2500").text(75, 100, 10, "mAh").readPage(folder);
    assertEquals(List.of("2500", "mAh"), texts(page));
  }

  @Test
  void piecesDrawnOutOfOrderMakeOneWord() throws SheetException {
    Page page =
        Drawn.sheet()
            .text(61.12, 100, 10, "00")
            .text(50, 100, 10, "25")
            .text(72.24, 100, 10, "mAh")
            .readPage(folder);
    assertEquals(List.of("2500mAh"), texts(page));
  }

  @Test
  void lettersSetApartMakeOneWord() throws SheetException {
    Drawn sheet = Drawn.sheet();
    double[] x = {50};
    for (String letter : "RATING".split("")) {
      sheet.text(x[0], 100, 9, letter);
      sheet.quietly(() -> x[0] += 4 + 9 * PDType1Font.HELVETICA.getStringWidth(letter) / 1000);
    }
    assertEquals(List.of("RATING"), texts(sheet.readPage(folder)));
  }

  @Test
  void letterSpacingSetForARunDoesNotPartWords() throws SheetException {
    Drawn sheet = Drawn.sheet();
    sheet.quietly(() -> sheet.content().setCharacterSpacing(4));
    sheet.text(50, 100, 9, "Cell type");
    assertEquals(List.of("Cell", "type"), texts(sheet.readPage(folder)));
  }

  @Test
  void doublePrintIsBoldAndReadOnce() throws SheetException {
    Page page =
        Drawn.sheet().text(50, 100, 10, "Mass").text(50.4, 100, 10, "Mass").readPage(folder);
    assertEquals(List.of("Mass"), texts(page));
    assertTrue(words(page).get(0).bold());
  }

  @Test
  void doubledLettersAreNoDoublePrint() throws SheetException {
    assertEquals(List.of("cell"), texts(Drawn.sheet().text(50, 100, 10, "cell").readPage(folder)));
  }

  @Test
  void symbolFontBecomesUnicode() throws SheetException {
    Page page =
        Drawn.sheet()
            .text(50, 100, 10, PDType1Font.SYMBOL, 0, "\u2264\u2265\u00B1\u2126")
            .readPage(folder);
    assertEquals(List.of("\u2264\u2265\u00B1\u03A9"), texts(page));
  }

  @Test
  void footnoteMarkIsRaised() throws SheetException {
    Page page = Drawn.sheet().text(50, 100, 10, "Capacity").text(89.5, 96, 6, "1").readPage(folder);
    assertEquals(1, words(page).get(1).raised());
    assertEquals("Capacity 1", page.lines().get(0).text());
  }

  @Test
  void subscriptOfARateStaysInItsWord() throws SheetException {
    Page page =
        Drawn.sheet()
            .text(50, 100, 10, "0.2C")
            .text(71.2, 102, 6, "5")
            .text(74.6, 100, 10, "A")
            .readPage(folder);
    assertEquals(List.of("0.2C5A"), texts(page));
  }

  @Test
  void raisedLetterBeforeCIsADegreeSign() throws SheetException {
    Page page =
        Drawn.sheet()
            .text(50, 100, 10, "25")
            .text(61.2, 96, 6, "o")
            .text(64.6, 100, 10, "C")
            .readPage(folder);
    assertEquals(List.of("25\u00B0C"), texts(page));
  }

  @Test
  void toleranceStackKeepsItsWords() throws SheetException {
    Page page =
        Drawn.sheet()
            .text(50, 100, 10, "7.0")
            .text(65, 96, 6, "+0,3")
            .text(65, 102, 6, "-0,3")
            .readPage(folder);
    assertEquals(List.of("7.0", "+0,3", "-0,3"), texts(page));
    assertEquals(List.of(0, 1, -1), words(page).stream().map(Word::raised).toList());
    assertEquals("7.0 +0,3 -0,3", page.lines().get(0).text());
  }

  @Test
  void looseSignBelongsToTheNumberUnlessItParts() throws SheetException {
    Page page =
        Drawn.sheet()
            .text(50, 100, 10, "-")
            .text(56, 100, 10, "20")
            .text(50, 130, 10, "5")
            .text(58.5, 130, 10, "-")
            .text(64.5, 130, 10, "20")
            .readPage(folder);
    assertEquals(List.of("-20", "5", "-", "20"), texts(page));
  }

  @Test
  void whiteTextIsReadOnADarkGroundOnly() throws SheetException {
    Drawn sheet = Drawn.sheet().filled(40, 80, 200, 30, 0.2);
    sheet.quietly(() -> sheet.content().setNonStrokingColor(1f));
    sheet.text(50, 100, 10, "Specification").text(50, 200, 10, "hidden");
    assertEquals(List.of("Specification"), texts(sheet.readPage(folder)));
  }

  @Test
  void hiddenTextOfAScanIsRecognisedNotWritten() throws SheetException {
    Drawn sheet = Drawn.sheet();
    sheet.quietly(() -> sheet.content().setRenderingMode(RenderingMode.NEITHER));
    sheet.text(50, 100, 10, "Mass");
    Word word = words(sheet.readPage(folder)).get(0);
    assertTrue(word.recognised());
    assertEquals(WordBuilder.HIDDEN_TEXT_CONFIDENCE, word.confidence());
  }

  @Test
  void textOutsideThePageIsLeftOut() throws SheetException {
    Drawn sheet = Drawn.sheet().text(50, 100, 10, "Mass").text(500, 100, 10, "away");
    sheet.document().getPage(0).setCropBox(new PDRectangle(40, 450, 300, 100));
    Page page = sheet.readPage(folder);
    assertEquals(List.of("Mass"), texts(page));
    assertEquals(10, words(page).get(0).box().x(), 0.01);
    assertEquals(300, page.width(), 0.01);
  }

  @Test
  void textOfAHiddenLayerIsLeftOut() throws SheetException {
    Drawn sheet = Drawn.sheet();
    PDOptionalContentProperties layers = new PDOptionalContentProperties();
    PDOptionalContentGroup draft = new PDOptionalContentGroup("draft");
    layers.addGroup(draft);
    layers.setGroupEnabled(draft, false);
    sheet.document().getDocumentCatalog().setOCProperties(layers);
    sheet.quietly(() -> sheet.content().beginMarkedContent(COSName.OC, draft));
    sheet.text(50, 100, 10, "old");
    sheet.quietly(() -> sheet.content().endMarkedContent());
    sheet.text(50, 130, 10, "new");
    assertEquals(List.of("new"), texts(sheet.readPage(folder)));
  }

  @Test
  void dimensionSetUprightIsAWordButNoLine() throws SheetException {
    Page page =
        Drawn.sheet()
            .text(50, 100, 10, "Drawing of the cell")
            .text(200, 300, 10, PDType1Font.HELVETICA, 90, "65.2")
            .readPage(folder);
    Word dimension = words(page).stream().filter(w -> w.text().equals("65.2")).findFirst().get();
    assertEquals(90, dimension.turn());
    assertTrue(dimension.box().contains(196, 290));
    assertEquals(1, page.lines().size());
  }

  @Test
  void watermarkBehindTextStandsOnNoLine() throws SheetException {
    Drawn sheet = Drawn.sheet();
    sheet.quietly(() -> sheet.content().setNonStrokingColor(0.85f));
    sheet.text(60, 320, 60, "SAMPLE").text(60, 420, 40, PDType1Font.HELVETICA, 40, "DRAFT");
    sheet.quietly(() -> sheet.content().setNonStrokingColor(0f));
    sheet.text(70, 310, 10, "Mass 48 g");
    Page page = sheet.readPage(folder);
    assertEquals(List.of("Mass 48 g"), page.lines().stream().map(Line::text).toList());
    assertEquals(5, page.words().size());
  }

  @Test
  void rotatedPageIsReadAsDisplayed() throws SheetException {
    Drawn sheet = Drawn.sheet().text(100, 300, 10, PDType1Font.HELVETICA, 90, "Mass 48 g");
    sheet.document().getPage(0).setRotation(90);
    Page page = sheet.readPage(folder);
    assertEquals(600, page.width(), 0.01);
    Word mass = words(page).get(0);
    assertEquals(0, mass.turn());
    // (100, 300 from below) turned clockwise: x' = y, y' = x.
    assertEquals(300, mass.box().x(), 0.01);
    assertTrue(mass.box().contains(305, 98));
  }

  @Test
  void contentSetSidewaysIsTurnedUpright() throws SheetException {
    Drawn sheet = Drawn.sheet();
    for (int i = 0; i < 5; i++) {
      sheet.text(100 + 15 * i, 300, 10, PDType1Font.HELVETICA, 90, "Row " + i);
    }
    Page page = sheet.readPage(folder);
    assertEquals(600, page.width(), 0.01);
    assertEquals(
        List.of("Row 0", "Row 1", "Row 2", "Row 3", "Row 4"),
        page.lines().stream().map(Line::text).toList());
  }

  private static List<Word> words(Page page) {
    return page.words();
  }

  private static List<String> texts(Page page) {
    return page.words().stream().map(Word::text).toList();
  }
}
