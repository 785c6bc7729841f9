package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was recognised once is not recognised again, and nothing about that gets in the way. */
class KeptWordsTest {
  private static final Word WORD =
      new Word("-20~60\u2103", new Box(60, 105, 30, 8), 10, false, 90, 1, true, 0.97);

  @TempDir Path folder;
  private int readings;

  private final Recogniser counting =
      picture -> {
        readings++;
        return List.of(WORD);
      };

  private Path scan() throws IOException {
    BufferedImage image = new BufferedImage(100, 150, BufferedImage.TYPE_INT_RGB);
    Drawn drawn = Drawn.sheet();
    drawn
        .content()
        .drawImage(LosslessFactory.createFromImage(drawn.document(), image), 0, 0, 400, 600);
    return drawn.save(folder);
  }

  private Path kept() {
    return folder.resolve("kept");
  }

  private KeptWords words(String engine) {
    return new KeptWords(new KeptFiles(kept(), 1 << 20), () -> engine);
  }

  private Sheet read(Path file, KeptWords words) throws SheetException {
    return new SheetReader(SheetSettings.defaults(), counting).keeping(words).readSheet(file);
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(kept())) {
      return files.toList();
    }
  }

  @Test
  void aPageIsRecognisedOnce() throws IOException, SheetException {
    Path file = scan();
    Sheet first = read(file, words("1"));
    int once = readings;
    assertTrue(once > 0);
    assertEquals(first, read(file, words("1")));
    assertEquals(once, readings);
  }

  @Test
  void anotherBuildRecognisesAnew() throws IOException, SheetException {
    Path file = scan();
    read(file, words("1"));
    int once = readings;
    read(file, words("2"));
    assertEquals(2 * once, readings);
  }

  @Test
  void whoseVersionIsUnknownKeepsNothing() throws IOException, SheetException {
    Path file = scan();
    read(file, words(null));
    assertFalse(Files.exists(kept()));
  }

  @Test
  void whatIsDamagedIsRecognisedAnew() throws IOException, SheetException {
    Path file = scan();
    Sheet first = read(file, words("1"));
    int once = readings;
    byte[] whole = Files.readAllBytes(files().get(0));
    byte[] half = java.util.Arrays.copyOf(whole, whole.length / 2);
    byte[] changed = whole.clone();
    changed[whole.length / 2] ^= 0x10;
    int times = 1;
    for (byte[] damaged : List.of(new byte[0], half, changed, new byte[] {1, 2, 3})) {
      Files.write(files().get(0), damaged);
      assertEquals(first, read(file, words("1")));
      times++;
      assertEquals(times * once, readings);
    }
  }

  @Test
  void aFolderThatCannotBeWrittenToIsNoFailure() throws IOException, SheetException {
    Path file = scan();
    Files.writeString(kept(), "a file where the folder should be");
    Sheet first = read(file, words("1"));
    assertEquals(first, read(file, words("1")));
  }

  @Test
  void thePixelsOfAChartAreRecognisedOnce() {
    BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
    PagePixels picture = new PagePixels(1, new Box(10, 10, 20, 15), image);
    Recogniser remembering = words("1").before(counting);
    assertEquals(List.of(WORD), remembering.words(picture));
    assertEquals(List.of(WORD), words("1").before(counting).words(picture));
    assertEquals(1, readings);
    image.setRGB(39, 29, 0xFFFFFF);
    remembering.words(picture);
    assertEquals(2, readings);
    remembering.words(new PagePixels(1, new Box(11, 10, 20, 15), image));
    assertEquals(3, readings);
  }

  @Test
  void whatWasNotUsedForLongGoesFirst() throws IOException {
    KeptFiles files = new KeptFiles(kept(), 1000);
    byte[] content = new byte[300];
    List<String> keys = List.of("a", "b", "c");
    for (String key : keys) {
      files.keep(key, content);
    }
    int age = 100;
    for (Path each : files()) {
      Files.setLastModifiedTime(each, FileTime.from(Instant.now().minusSeconds(age++)));
    }
    assertArrayEquals(content, files.find("b"));
    files.keep("d", content);
    assertNotNull(files.find("b"));
    assertNotNull(files.find("d"));
    assertTrue(files.find("a") == null || files.find("c") == null);
    assertTrue(files().size() <= 3);
  }

  @Test
  void filesNobodyFinishedAreTakenAway() throws IOException {
    KeptFiles files = new KeptFiles(kept(), 1000);
    files.keep("a", new byte[10]);
    Path old = Files.createFile(kept().resolve("x.part"));
    Files.setLastModifiedTime(old, FileTime.from(Instant.now().minusSeconds(100_000)));
    files.keep("b", new byte[10]);
    assertFalse(Files.exists(old));
  }

  @Test
  void theBuildIsToldByItsContent() throws IOException {
    Path code = Files.createDirectories(folder.resolve("code/commonsheet/sheet"));
    Path program = folder.resolve("code");
    Files.writeString(code.resolve("A.class"), "one");
    String first = EngineVersion.of(program);
    assertEquals(first, EngineVersion.of(program));
    Files.writeString(program.resolve("notes.txt"), "beside");
    assertEquals(first, EngineVersion.of(program));
    Files.writeString(code.resolve("A.class"), "two");
    List<String> seen = new ArrayList<>(List.of(first));
    assertFalse(seen.contains(EngineVersion.of(program)));
  }

  @Test
  void nothingIsFoundUnderAKeyNeverUsed() {
    assertNull(new KeptFiles(kept(), 1000).find("never"));
  }
}
