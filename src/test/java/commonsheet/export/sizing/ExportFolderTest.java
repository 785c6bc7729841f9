package commonsheet.export.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An export replaces an earlier one, and nothing else. */
class ExportFolderTest {
  @TempDir Path parent;

  private Path folder() {
    return parent.resolve("out");
  }

  private void write(String... namesAndTexts) throws ExportException {
    Map<String, String> files = new TreeMap<>();
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      files.put(namesAndTexts[i], namesAndTexts[i + 1]);
    }
    new ExportFolder(folder()).write(files);
  }

  private Map<String, String> content() throws IOException {
    Map<String, String> content = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder())) {
      for (Path file : files.toList()) {
        content.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    content.remove(ExportFolder.LIST);
    return content;
  }

  @Test
  void anExportReplacesAnEarlierOneWhole() throws Exception {
    write("a.json", "1", "b.json", "2");
    write("a.json", "3", "c.json", "4");
    assertEquals(Map.of("a.json", "3", "c.json", "4"), content());
  }

  /** SHA-256 of "abc": FIPS 180-4, example of NIST. */
  @Test
  void theListIsInTheFormThatSha256sumChecks() throws Exception {
    write("a.json", "abc");
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  a.json\n",
        Files.readString(folder().resolve(ExportFolder.LIST)));
  }

  @Test
  void aFileOfSomebodyElseIsLeftAndNothingIsWritten() throws Exception {
    write("a.json", "1");
    Files.writeString(folder().resolve("b.json"), "mine");
    Files.writeString(folder().resolve("notes.txt"), "mine too");
    Map<String, String> before = content();
    ExportException refusal =
        assertThrows(ExportException.class, () -> write("a.json", "2", "b.json", "2"));
    assertTrue(refusal.getMessage().startsWith(folder().resolve("b.json").toString()));
    assertTrue(refusal.getMessage().contains("not written over"), refusal.getMessage());
    assertEquals(before, content());
  }

  @Test
  void aFileThatWasChangedSinceIsLeft() throws Exception {
    write("a.json", "1", "b.json", "2");
    Files.writeString(folder().resolve("a.json"), "changed by hand");
    assertThrows(ExportException.class, () -> write("a.json", "3"));
    write("b.json", "4");
    assertEquals(Map.of("a.json", "changed by hand", "b.json", "4"), content());
  }

  /** The list is written first with the old lines and the new, so that either content is ours. */
  @Test
  void anExportThatWasInterruptedCanBeRepeated() throws Exception {
    write("a.json", "1", "b.json", "2");
    String old = Files.readString(folder().resolve(ExportFolder.LIST));
    write("a.json", "3", "b.json", "4");
    String now = Files.readString(folder().resolve(ExportFolder.LIST));
    // As it is left when the second run ends after its first file.
    Files.writeString(folder().resolve("b.json"), "2");
    Files.writeString(folder().resolve(ExportFolder.LIST), old + now);
    write("a.json", "5", "b.json", "6");
    assertEquals(Map.of("a.json", "5", "b.json", "6"), content());
  }

  @Test
  void aListThatSomebodyWroteTakesNothingAway() throws Exception {
    Files.createDirectories(folder());
    Files.writeString(parent.resolve("outside.txt"), "abc");
    Files.writeString(
        folder().resolve(ExportFolder.LIST),
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  ../outside.txt\n");
    write("a.json", "1");
    assertTrue(Files.exists(parent.resolve("outside.txt")));
  }

  @Test
  void refusesNamesThatLeaveTheFolder() {
    assertThrows(IllegalArgumentException.class, () -> write("../a.json", "1"));
    assertThrows(IllegalArgumentException.class, () -> write(".hidden", "1"));
    assertFalse(Files.exists(parent.resolve("a.json")));
  }

  @Test
  void saysWhenTheFolderIsAFile() throws Exception {
    Files.writeString(folder(), "a file");
    ExportException refusal = assertThrows(ExportException.class, () -> write("a.json", "1"));
    assertTrue(refusal.getMessage().contains("cannot be written to"), refusal.getMessage());
    assertEquals("a file", Files.readString(folder()));
  }
}
