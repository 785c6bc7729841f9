package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets whose fonts tell other characters than they draw; what is seen is told by the test. */
class LyingTextTest {
  @TempDir Path folder;
  private final List<List<TextPlace>> asked = new ArrayList<>();
  private int pages;

  /** A standard font with a map to Unicode of one line (ISO 32000-1, 9.10.3). */
  private static PDFont font(PDDocument document, String name, String mapping) throws IOException {
    PDStream map = new PDStream(document);
    try (OutputStream out = map.createOutputStream()) {
      out.write(
          ("begincmap 1 begincodespacerange <00> <FF> endcodespacerange " + mapping + " endcmap")
              .getBytes(StandardCharsets.US_ASCII));
    }
    COSDictionary font = new COSDictionary();
    font.setItem(COSName.TYPE, COSName.FONT);
    font.setItem(COSName.SUBTYPE, COSName.TYPE1);
    font.setName(COSName.BASE_FONT, name);
    font.setItem(COSName.TO_UNICODE, map);
    return PDFontFactory.createFont(font);
  }

  private Page read(Path file, List<Word> seen) throws SheetException {
    Recogniser recogniser =
        new Recogniser() {
          @Override
          public List<Word> words(PagePixels picture) {
            pages++;
            return seen;
          }

          @Override
          public List<Word> words(PagePixels picture, List<TextPlace> places) {
            asked.add(places);
            return seen;
          }
        };
    return new SheetReader(SheetSettings.defaults(), recogniser).readSheet(file).pages().get(0);
  }

  private static Word seen(String text, double x, double confidence) {
    return new Word(text, new Box(x, 92, 30, 9), 10, false, 0, 0, true, confidence);
  }

  /** Drawn as "60 m" and an ohm sign, written with a private code for that. */
  private Path ohmWithoutUnicode() throws IOException {
    Drawn drawn = Drawn.sheet().text(60, 100, 10, "Resistance");
    PDFont symbol = font(drawn.document(), "Symbol", "1 beginbfchar <57> <E0A1> endbfchar");
    drawn.text(130, 100, 10, "60m");
    drawn.text(149.5, 100, 10, symbol, 0, "\u2126");
    return drawn.save(folder);
  }

  @Test
  void aSignTheFileDoesNotTellIsTakenFromWhatIsDrawn() throws IOException, SheetException {
    Page page = read(ohmWithoutUnicode(), List.of(seen("60m\u03A9", 130, 0.97)));
    Word mended = page.words().get(1);
    assertEquals("60m\u03A9", mended.text());
    assertTrue(mended.recognised());
    assertEquals(0.97, mended.confidence());
    assertFalse(page.words().get(0).recognised());
    assertEquals(1, asked.get(0).size());
  }

  @Test
  void whatDoesNotAgreeWithTheKnownCharactersIsLeft() throws IOException, SheetException {
    Page page = read(ohmWithoutUnicode(), List.of(seen("80m\u03A9", 130, 0.97)));
    assertEquals("60m\uE0A1", page.words().get(1).text());
  }

  @Test
  void aLetterInItsPlaceIsDoubted() throws IOException, SheetException {
    Page page = read(ohmWithoutUnicode(), List.of(seen("60mQ", 130, 0.97)));
    assertEquals("60m\u03A9", page.words().get(1).text(), "mended, since the row says resistance");
    assertEquals(0.5, page.words().get(1).confidence());
  }

  /** Each character 29 places before what is drawn, as numbers of glyphs often are. */
  @Test
  void aPageOfOtherLettersIsReadLikeAPicture() throws IOException, SheetException {
    Drawn drawn = Drawn.sheet();
    PDFont shifted =
        font(drawn.document(), "Helvetica", "1 beginbfrange <20> <7E> <0003> endbfrange");
    String line = "Nominal capacity voltage discharge current storage temperature";
    for (int i = 0; i < 4; i++) {
      drawn.text(40, 100 + 30 * i, 8, shifted, 0, line);
    }
    Page page = read(drawn.save(folder), List.of(seen("Nominal", 40, 0.97)));
    assertEquals(List.of("Nominal"), page.words().stream().map(Word::text).toList());
    assertTrue(pages > 0);
  }

  @Test
  void ordinaryPagesAreBelieved() {
    String[] lines = {
      "Nominal capacity 2600mAh, charge CCCV to 4.20V; cut-off 130mA (0.05C)",
      "Entladeschlussspannung und Kapazit\u00E4t nach Lagerung bei 25\u00B0C",
      "http://www.lake.example/data_sheet.pdf info@lake.example"
    };
    List<Word> words = new ArrayList<>();
    for (String line : lines) {
      for (String word : line.split(" ")) {
        words.add(new Word(word, new Box(0, 0, 9, 9), 9, false, 0, 0, false, 1));
      }
    }
    assertFalse(TextTrust.lies(words));
  }

  @Test
  void aBulletIsNotLookedAt() {
    Word bullet = new Word("\uE00C", new Box(40, 92, 8, 9), 9, false, 0, 0, false, 1);
    Word item = new Word("Safety", new Box(52, 92, 40, 9), 9, false, 0, 0, false, 1);
    assertEquals(List.of(), SuspectWords.of(List.of(bullet, item)));
  }
}
