package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import commonsheet.api.RecordFolder;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordFolderTest {
  @TempDir Path folder;

  @Test
  void twoSheetsOfOneNameStandSideBySide() throws RecordException {
    RecordFolder records = new RecordFolder(folder);
    Path first = write(records, "a.pdf", Standing.READ);
    Path second = write(records, "b.pdf", Standing.READ);
    assertEquals(folder.resolve("tl-25.json"), first);
    assertEquals(folder.resolve("tl-25-2.json"), second);
    assertEquals("tl-25-2", new RecordStore(folder).read(second).id());
  }

  @Test
  void twoCellsOfOneSheetStandSideBySide() throws RecordException {
    RecordFolder records = new RecordFolder(folder);
    records.write(Records.of("tl-25", "a.pdf", Standing.READ));
    assertEquals(folder.resolve("tl-25-2.json"), write(records, "a.pdf", Standing.READ));
  }

  @Test
  void readingAgainReplacesEachSheetsOwnRecord() throws RecordException {
    for (int run = 0; run < 2; run++) {
      RecordFolder records = new RecordFolder(folder);
      records.write(Records.of("tl-25", "a.pdf", Standing.READ));
      records.write(Records.of("tl-25", "b.pdf", Standing.READ));
    }
    Path secondAlone = write(new RecordFolder(folder), "b.pdf", Standing.READ);
    assertEquals(folder.resolve("tl-25-2.json"), secondAlone);
    assertEquals(2, new RecordStore(folder).readAll().size());
  }

  @Test
  void whatAPersonSettledIsNotReplaced() throws RecordException, IOException {
    Path settled = write(new RecordFolder(folder), "a.pdf", Standing.CONFIRMED);
    String before = Files.readString(settled);
    RecordFolder records = new RecordFolder(folder);
    assertThrows(
        RecordException.class, () -> records.write(Records.of("tl-25", "a.pdf", Standing.READ)));
    assertEquals(before, Files.readString(settled));
  }

  private static Path write(RecordFolder records, String file, Standing standing)
      throws RecordException {
    return records.write(Records.of("tl-25", file, standing)).file();
  }

  @Test
  void whatTheFolderHasOfTheVeryFileIsTakenFirst() throws RecordException {
    CellRecord settled = Records.of("tl-25", "a.pdf", Standing.CONFIRMED);
    new RecordFolder(folder).write(settled);
    CellRecord read = Records.of("tl-25", "a.pdf", Standing.READ);
    CellRecord other = Records.of("tl-25", "b.pdf", Standing.READ);
    assertEquals(List.of(settled), new RecordFolder(folder).of(List.of(read)));
    assertEquals(List.of(other), new RecordFolder(folder).of(List.of(other)));
  }
}
