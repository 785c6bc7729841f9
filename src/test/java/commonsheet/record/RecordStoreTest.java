package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RecordStoreTest {
  private static final Statement MASS =
      Records.statement("s1", "mass", null, 48, "g", Conditions.NONE, 3);
  private static final String OTHER_SHA256 = "0".repeat(64);

  @TempDir Path folder;

  @Test
  void readsBackWhatItWrote() throws Exception {
    RecordStore store = new RecordStore(folder.resolve("new/folder"));
    CellRecord record = Records.with(MASS);
    Path file = store.write(record);
    assertEquals(folder.resolve("new/folder/tarn-cells-tc-26e.json"), file);
    assertEquals(record, store.read(file));
    assertEquals(List.of(record), store.readAll());
    assertEquals(RecordJson.write(record), Files.readString(file));
  }

  @Test
  void replacesADraftReadFromTheSameSheetAndLeavesNothingElse() throws Exception {
    RecordStore store = new RecordStore(folder);
    store.write(Records.with());
    store.write(Records.with(MASS));
    assertEquals(List.of("tarn-cells-tc-26e.json"), names());
    assertEquals(1, store.readAll().get(0).statements().size());
  }

  @Test
  void writesNoInvalidRecord() throws Exception {
    RecordStore store = new RecordStore(folder);
    Statement wrongUnit =
        Records.statement("s1", "capacity", null, 2600, "mA.h", Conditions.NONE, 3);
    RecordException e =
        assertThrows(RecordException.class, () -> store.write(Records.with(wrongUnit)));
    assertEquals(
        "the record \"tarn-cells-tc-26e\" is not written, because it is not valid:"
            + " /statements/0/unit: must be \"A.h\", not \"mA.h\"",
        e.getMessage());
    Statement infinite = Records.statement("s1", "mass", null, 1.0 / 0, "g", Conditions.NONE, 3);
    assertThrows(RecordException.class, () -> store.write(Records.with(infinite)));
    assertEquals(List.of(), names());
  }

  @ParameterizedTest
  @EnumSource(
      value = Standing.class,
      names = {"CONFIRMED", "CORRECTED", "REJECTED"})
  void doesNotWriteOverWhatAPersonHasSettled(Standing standing) throws Exception {
    RecordStore store = new RecordStore(folder);
    CellRecord settled = Records.with(Records.standing(MASS, standing));
    Path file = store.write(settled);
    RecordException e = assertThrows(RecordException.class, () -> store.write(Records.with(MASS)));
    assertEquals(
        file
            + " holds values that a person has confirmed, corrected or rejected, so it is not"
            + " written over; move it away or write to another folder",
        e.getMessage());
    assertEquals(settled, store.read(file));
  }

  @Test
  void replacesADraftThatKeepsWhatAPersonHasSettled() throws Exception {
    RecordStore store = new RecordStore(folder);
    Statement settled = Records.standing(MASS, Standing.CONFIRMED);
    store.write(Records.with(settled));
    Statement more = Records.statement("s2", "height", null, 65, "mm", Conditions.NONE, 3);
    Path file = store.write(Records.with(settled, more));
    assertEquals(List.of(settled, more), store.read(file).statements());
  }

  @Test
  void doesNotWriteOverAnApprovedRecord() throws Exception {
    String approval =
        """
        {"state": "approved", "approvedBy": "I. Fell", \
        "approvedAt": "2026-05-04T08:00:00+02:00", "content": "%s"}\
        """
            .formatted(Records.SHA256);
    Path file = folder.resolve("tarn-cells-tc-26e.json");
    Files.writeString(file, Variant.of("valid /review " + approval).apply(Samples.full()));
    RecordStore store = new RecordStore(folder);
    RecordException e = assertThrows(RecordException.class, () -> store.write(Records.with()));
    assertTrue(
        e.getMessage().contains(" was approved before, so it is not written over;"),
        e.getMessage());
    String hash = ContentHash.of(store.read(file));
    String text = Files.readString(file);
    int review = text.lastIndexOf(Records.SHA256);
    Files.writeString(file, text.substring(0, review) + hash + text.substring(review + 64));
    e = assertThrows(RecordException.class, () -> store.write(Records.with()));
    assertTrue(e.getMessage().contains(" is approved, so it is not written over;"), e.getMessage());
  }

  @Test
  void doesNotWriteOverTheRecordOfAnotherSheet() throws Exception {
    RecordStore store = new RecordStore(folder);
    store.write(Records.with(MASS));
    CellRecord other = fromSheet("tc-26e-de.pdf", OTHER_SHA256);
    RecordException e = assertThrows(RecordException.class, () -> store.write(other));
    assertTrue(
        e.getMessage().contains(" is the record of another sheet, tc-26e.pdf, so"), e.getMessage());
    store.write(fromSheet("tc-26e.pdf", OTHER_SHA256));
    store.write(fromSheet("renamed.pdf", OTHER_SHA256));
  }

  @Test
  void doesNotWriteOverAFileItCannotRead() throws Exception {
    Path file = Files.writeString(folder.resolve("tarn-cells-tc-26e.json"), "{\"half\": ");
    RecordException e =
        assertThrows(RecordException.class, () -> new RecordStore(folder).write(Records.with()));
    assertTrue(e.getMessage().startsWith("not written over, since it may hold someone's work: "));
    assertTrue(e.getMessage().endsWith("Repair it, or move it away."));
    assertEquals("{\"half\": ", Files.readString(file));
  }

  @Test
  void saysWhenTheFolderIsAFile() throws Exception {
    Path file = Files.writeString(folder.resolve("records"), "");
    RecordStore store = new RecordStore(file);
    String message =
        assertThrows(RecordException.class, () -> store.write(Records.with())).getMessage();
    assertTrue(message.startsWith(file + " cannot be used as a folder of records ("), message);
    message = assertThrows(RecordException.class, store::readAll).getMessage();
    assertTrue(message.startsWith(file + " cannot be read as a folder of records ("), message);
    assertEquals(0, Files.size(file));
  }

  @Test
  void leavesNoPartWhenTheLastStepFails() throws Exception {
    Path target = Files.createDirectory(folder.resolve("tarn-cells-tc-26e.json"));
    Files.writeString(target.resolve("inside"), "");
    assertThrows(
        IOException.class, () -> AtomicFile.write(target, "text".getBytes(StandardCharsets.UTF_8)));
    assertEquals(List.of("tarn-cells-tc-26e.json"), names());
    assertThrows(RecordException.class, () -> new RecordStore(folder).write(Records.with()));
    assertEquals(List.of("tarn-cells-tc-26e.json"), names());
  }

  @Test
  void saysWhichFileCannotBeRead() throws Exception {
    RecordStore store = new RecordStore(folder);
    Path missing = folder.resolve("missing.json");
    assertEquals(
        missing + " does not exist; check the name",
        assertThrows(RecordException.class, () -> store.read(missing)).getMessage());
    Path latin1 = Files.write(folder.resolve("latin1.json"), new byte[] {'"', (byte) 0xE9, '"'});
    assertTrue(
        assertThrows(RecordException.class, () -> store.read(latin1))
            .getMessage()
            .startsWith(latin1 + " is not in UTF-8"));
    String message = assertThrows(RecordException.class, () -> store.read(folder)).getMessage();
    assertTrue(message.startsWith(folder + " cannot be read ("), message);
    assertTrue(
        assertThrows(RecordException.class, store::readAll)
            .getMessage()
            .startsWith(latin1.toString()));
  }

  @Test
  void readsRecordsInTheOrderOfNamesAndSkipsTheRest() throws Exception {
    RecordStore store = new RecordStore(folder);
    store.write(Records.with(MASS));
    Files.writeString(folder.resolve(".tarn-cells-tc-26e.json.1.part"), "{");
    Files.writeString(folder.resolve(".hidden.json"), "{");
    Files.writeString(folder.resolve("notes.txt"), "notes");
    Files.createDirectory(folder.resolve("old.json"));
    Files.writeString(
        folder.resolve("a.json"),
        RecordJson.write(Records.with()).replace("\"tarn-cells-tc-26e\"", "\"a\""));
    assertEquals(
        List.of("a", "tarn-cells-tc-26e"), store.readAll().stream().map(CellRecord::id).toList());
  }

  @Test
  void hasNoRecordsInAnEmptyFolder() throws Exception {
    assertEquals(List.of(), new RecordStore(folder).readAll());
    assertFalse(Files.exists(folder.resolve("none")));
    assertThrows(RecordException.class, () -> new RecordStore(folder.resolve("none")).readAll());
  }

  private static CellRecord fromSheet(String file, String sha256) {
    CellRecord record = Records.with(MASS);
    return new CellRecord(
        record.schema(),
        record.id(),
        record.cell(),
        Records.source(file, sha256),
        record.statements(),
        record.curves(),
        record.findings(),
        record.review());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
