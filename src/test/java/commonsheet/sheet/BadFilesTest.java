package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that cannot be read are refused with one sentence that names the file and what to do. */
class BadFilesTest {
  @TempDir Path folder;

  @Test
  void missingFile() {
    refuse(SheetException.Kind.NOT_FOUND, folder.resolve("none.pdf"), SheetSettings.defaults());
  }

  @Test
  void emptyFile() {
    refuse(SheetException.Kind.NOT_A_PDF, Drawn.save(folder, new byte[0]));
  }

  @Test
  void textRenamedToPdf() {
    byte[] story = "Once upon a time on the lake.".getBytes(StandardCharsets.UTF_8);
    refuse(SheetException.Kind.NOT_A_PDF, Drawn.save(folder, story));
  }

  @Test
  void fileCutShort() {
    byte[] whole = Drawn.sheet().text(50, 100, 9, "Mass 48 g").bytes();
    for (int share = 3; share <= 9; share++) {
      byte[] part = Arrays.copyOf(whole, whole.length * share / 10);
      refuse(SheetException.Kind.DAMAGED, Drawn.save(folder, part));
    }
  }

  @Test
  void damagedContentIsNotHalfRead() {
    String[] rows = new String[60];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = "Clause " + i * 7919 % 1000 + " holds for " + i * i + " hours";
    }
    byte[] whole = Drawn.sheet().lines(50, 10, 8, 9, rows).bytes();
    String text = new String(whole, StandardCharsets.ISO_8859_1);
    int middle = (text.indexOf("stream") + text.indexOf("endstream")) / 2;
    Arrays.fill(whole, middle, middle + 40, (byte) 0xFF);
    refuse(SheetException.Kind.DAMAGED, Drawn.save(folder, whole));
  }

  @Test
  void brokenTableOfObjectsIsRepairedWhenTheFileIsWhole() throws SheetException {
    String whole =
        new String(Drawn.sheet().text(50, 100, 9, "Mass").bytes(), StandardCharsets.ISO_8859_1);
    String broken = whole.replaceAll("startxref\\s+\\d+", "startxref\n7");
    Path file = Drawn.save(folder, broken.getBytes(StandardCharsets.ISO_8859_1));
    assertEquals("Mass", SheetReader.read(file).pages().get(0).words().get(0).text());
  }

  @Test
  void passwordToOpen() throws IOException {
    refuse(SheetException.Kind.ENCRYPTED, Drawn.save(folder, protectedBy("secret")));
  }

  @Test
  void passwordToChangeOnlyDoesNotLock() throws IOException, SheetException {
    Path file = Drawn.save(folder, protectedBy(""));
    assertEquals("Mass", SheetReader.read(file).pages().get(0).words().get(0).text());
  }

  private static byte[] protectedBy(String password) throws IOException {
    Drawn sheet = Drawn.sheet().text(50, 100, 9, "Mass");
    sheet
        .document()
        .protect(new StandardProtectionPolicy("owner", password, new AccessPermission()));
    return sheet.bytes();
  }

  @Test
  void noPages() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      document.save(out);
    }
    refuse(SheetException.Kind.NO_PAGES, Drawn.save(folder, out.toByteArray()));
  }

  @Test
  void morePagesThanADatasheetHas() {
    Drawn sheet = new Drawn();
    for (int i = 0; i < 300; i++) {
      sheet.page(100, 100);
    }
    refuse(SheetException.Kind.TOO_LARGE, sheet.save(folder));
  }

  @Test
  void moreCharactersThanAPageHolds() {
    Path file = Drawn.sheet().lines(50, 100, 9, 12, "x".repeat(60), "y".repeat(60)).save(folder);
    refuse(SheetException.Kind.TOO_LARGE, file, new SheetSettings(300, 100, 1000, 1 << 20, 20));
  }

  @Test
  void moreLinesThanADrawingHas() {
    Drawn sheet = Drawn.sheet();
    for (int i = 0; i < 200; i++) {
      sheet.line(0, i, 100, i);
    }
    refuse(
        SheetException.Kind.TOO_LARGE,
        sheet.save(folder),
        new SheetSettings(300, 1000, 100, 1 << 20, 20));
  }

  @Test
  void pageThatTakesTooLong() {
    Path file = Drawn.sheet().lines(50, 10, 9, 0.1, lines(2000)).save(folder);
    refuse(
        SheetException.Kind.TOO_LARGE,
        file,
        new SheetSettings(300, 1_000_000, 1_000_000, 1 << 24, 0));
  }

  /** Each of ten forms draws the next one ten times: ten thousand million lines from 2 kB. */
  @Test
  void formsThatDrawEachOther() throws IOException {
    Drawn sheet = Drawn.sheet();
    PDFormXObject inner = null;
    for (int level = 0; level < 10; level++) {
      PDFormXObject form = new PDFormXObject(sheet.document());
      form.setBBox(new PDRectangle(400, 600));
      form.setResources(new PDResources());
      StringBuilder drawing = new StringBuilder("0 0 m 10 10 l S ");
      if (inner != null) {
        String name = form.getResources().add(inner).getName();
        drawing.append(("/" + name + " Do ").repeat(10));
      }
      try (OutputStream out = form.getStream().createOutputStream()) {
        out.write(drawing.toString().getBytes(StandardCharsets.US_ASCII));
      }
      inner = form;
    }
    sheet.content().drawForm(inner);
    refuse(
        SheetException.Kind.TOO_LARGE,
        sheet.save(folder),
        new SheetSettings(300, 1000, 100_000, 1 << 24, 1));
  }

  @Test
  void pageLargerThanAField() {
    Drawn sheet = new Drawn().page(1e8, 1e8).text(50, 100, 9, "Mass").text(9e7, 100, 9, "48 g");
    refuse(SheetException.Kind.TOO_LARGE, sheet.save(folder));
  }

  @Test
  void letterLargerThanThePageIsNotRead() throws SheetException {
    Drawn sheet = Drawn.sheet().text(50, 100, 9, "Mass").text(-1e6, 1e6, 1e7, "X");
    assertEquals(1, sheet.readPage(folder).words().size());
  }

  /** Words strewn over a page, as on maps, are read in bearable time. */
  @Test
  void thousandsOfStrewnWords() throws SheetException {
    Drawn sheet = Drawn.sheet();
    for (int i = 0; i < 3000; i++) {
      sheet.text(i * 7919 % 390, 5 + i * 104 % 590, 3, "w" + i);
    }
    assertTrue(sheet.readPage(folder).words().size() > 2000);
  }

  private static String[] lines(int count) {
    String[] lines = new String[count];
    Arrays.fill(lines, "Mass");
    return lines;
  }

  /** 16 MB of spaces pack into 16 kB. */
  @Test
  void contentThatUnpacksToManyTimesItsSize() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage();
      document.addPage(page);
      PDStream content = new PDStream(document);
      byte[] spaces = " ".repeat(1 << 16).getBytes(StandardCharsets.US_ASCII);
      try (OutputStream stream = content.createOutputStream(COSName.FLATE_DECODE)) {
        for (int i = 0; i < 256; i++) {
          stream.write(spaces);
        }
      }
      page.setContents(content);
      document.save(out);
    }
    Path file = Drawn.save(folder, out.toByteArray());
    assertTrue(Files.size(file) < 100_000);
    refuse(SheetException.Kind.TOO_LARGE, file, new SheetSettings(300, 1000, 1000, 8 << 20, 20));
  }

  private void refuse(SheetException.Kind kind, Path file) {
    refuse(kind, file, SheetSettings.defaults());
  }

  private static void refuse(SheetException.Kind kind, Path file, SheetSettings settings) {
    SheetException refused =
        assertThrows(SheetException.class, () -> new SheetReader(settings).readSheet(file));
    assertEquals(kind, refused.kind(), refused.getMessage());
    assertTrue(refused.getMessage().contains(file.getFileName().toString()));
    assertTrue(refused.getMessage().endsWith("."));
    assertFalse(refused.getMessage().contains("\n"));
  }
}
