package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InputFilesTest {
  @TempDir Path folder;

  @Test
  void aFolderStandsForTheSheetsInItAndBelowInOrder() throws IOException {
    Path b = Files.createFile(folder.resolve("b.pdf"));
    Path deep = Files.createFile(Files.createDirectory(folder.resolve("a")).resolve("C.PDF"));
    Files.createFile(folder.resolve("notes.txt"));
    InputFiles found = InputFiles.find(List.of(folder, b), ".pdf");
    assertEquals(List.of(deep, b), found.files());
    assertTrue(found.problems().isEmpty());
  }

  @Test
  void aNamedFileIsTakenWhateverItsNameAndWhetherItExists() {
    Path named = folder.resolve("sheet");
    assertEquals(List.of(named), InputFiles.find(List.of(named), ".pdf").files());
    assertTrue(InputFiles.isSingleFile(List.of(named)));
  }

  @Test
  void anEmptyFolderIsSaid() {
    InputFiles found = InputFiles.find(List.of(folder), ".pdf");
    assertEquals(
        List.of(folder + ": there is no .pdf file in this folder or below it"), found.problems());
    assertFalse(InputFiles.isSingleFile(List.of(folder)));
  }

  @Test
  void hiddenFoldersArePassedOverUnlessTheyAreNamed() throws IOException {
    Path hidden = Files.createDirectories(folder.resolve(".kept").resolve("a"));
    Path inside = Files.createFile(hidden.resolve("a.pdf"));
    Path seen = Files.createFile(folder.resolve("b.pdf"));
    assertEquals(List.of(seen), InputFiles.find(List.of(folder), ".pdf").files());
    assertEquals(
        List.of(inside), InputFiles.find(List.of(folder.resolve(".kept")), ".pdf").files());
  }
}
