package commonsheet.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * A folder of record files, one record each, named after its id. Files are whole or absent, and
 * what a person has settled is never written over.
 */
public final class RecordStore {
  private static final String EXTENSION = ".json";

  /** What stands in a text for bytes that are not in UTF-8, or is in it by itself. */
  private static final char REPLACED = '\uFFFD';

  private final Path folder;

  /**
   * A store in a folder, which is created with the first record.
   *
   * @param folder need not exist yet
   */
  public RecordStore(Path folder) {
    this.folder = folder;
  }

  /**
   * Writes a record, in place of an earlier draft read from the same sheet. What a person settled
   * in that draft has to stand in the new one as it is.
   *
   * @return the file
   * @throws RecordException where the record is not valid, the file holds work of a person that the
   *     record lacks or the record of another sheet, or the folder cannot be written to; then the
   *     folder is as before
   */
  public Path write(CellRecord record) throws RecordException {
    String json = validText(record);
    Path file = folder.resolve(record.id() + EXTENSION);
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new RecordException(
          folder + " cannot be used as a folder of records (" + reason(e) + "); name another one",
          e);
    }
    try (FileGuard guard = FileGuard.of(file)) {
      refuseConflict(file, record);
      AtomicFile.write(file, json.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw unwritable(file, e);
    }
    return file;
  }

  /**
   * Writes a record that is new.
   *
   * @return the file
   * @throws RecordConflictException where the folder has a file of that name
   * @throws RecordException where the record is not valid or cannot be written
   */
  public Path create(CellRecord record) throws RecordException {
    byte[] json = validText(record).getBytes(StandardCharsets.UTF_8);
    Path file = folder.resolve(record.id() + EXTENSION);
    try (FileGuard guard = FileGuard.of(file)) {
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        throw new RecordConflictException(file + " is there already; choose another name");
      }
      AtomicFile.write(file, json);
    } catch (IOException e) {
      throw unwritable(file, e);
    }
    return file;
  }

  /**
   * Reads a record file together with its version, to be changed and {@link #save saved}.
   *
   * @throws RecordException where it cannot be read or is not a valid record
   */
  public static StoredRecord open(Path file) throws RecordException {
    byte[] bytes = bytes(file);
    CellRecord record = RecordJson.read(text(file, bytes), file.toString());
    return new StoredRecord(file, record, versionOf(bytes));
  }

  /**
   * Writes a changed record in place of the one it was made from, whatever a person has settled in
   * it: this is how persons settle things.
   *
   * @param before as it was read
   * @return as it is now
   * @throws RecordConflictException where the file is no longer as it was read, so that saving
   *     would undo somebody's work; then it stays as it is
   * @throws RecordException where the record is not valid or the file cannot be written
   */
  public static StoredRecord save(StoredRecord before, CellRecord after) throws RecordException {
    byte[] json = validText(after).getBytes(StandardCharsets.UTF_8);
    replace(before, json);
    return new StoredRecord(before.file(), after, versionOf(json));
  }

  /**
   * The version that a file has once a record has been {@link #save saved} in it.
   *
   * @throws RecordException where the record is not valid
   */
  public static String versionOf(CellRecord record) throws RecordException {
    return versionOf(validText(record).getBytes(StandardCharsets.UTF_8));
  }

  /** The version of a file of these bytes. */
  public static String versionOf(byte[] file) {
    return ContentHash.sha256(file);
  }

  /**
   * Puts an earlier content of a file back, byte by byte.
   *
   * @param now as it is expected to be still
   * @throws RecordConflictException where the file is no longer so; then it stays as it is
   * @throws RecordException where the content is no valid record or cannot be written
   */
  public static StoredRecord restore(StoredRecord now, byte[] earlier) throws RecordException {
    CellRecord record = RecordJson.read(text(now.file(), earlier), now.file().toString());
    replace(now, earlier);
    return new StoredRecord(now.file(), record, versionOf(earlier));
  }

  private static void replace(StoredRecord before, byte[] json) throws RecordException {
    Path file = before.file();
    try (FileGuard guard = FileGuard.of(file)) {
      if (Files.notExists(file) || !versionOf(bytes(file)).equals(before.version())) {
        throw new RecordConflictException(
            file
                + " has been changed since it was read, so nothing was written; look at it anew and"
                + " do it again");
      }
      AtomicFile.write(file, json);
    } catch (IOException e) {
      throw unwritable(file, e);
    }
  }

  private static RecordException unwritable(Path file, IOException e) {
    return new RecordException(
        file + " cannot be written (" + reason(e) + "); check the folder's permissions and space",
        e);
  }

  /**
   * Every record of the folder, in the order of file names; none for a folder without records.
   *
   * @throws RecordException where the folder or one of its {@code .json} files cannot be read as a
   *     record; names the file
   */
  public List<CellRecord> readAll() throws RecordException {
    List<Path> files;
    try (Stream<Path> entries = Files.list(folder)) {
      files = entries.filter(RecordStore::isRecordFile).sorted().toList();
    } catch (IOException e) {
      throw new RecordException(
          folder + " cannot be read as a folder of records (" + reason(e) + "); check its name", e);
    }
    List<CellRecord> records = new ArrayList<>();
    for (ReadRecord read : readAll(files)) {
      if (read.problem() != null) {
        throw read.problem();
      }
      records.add(read.record());
    }
    return List.copyOf(records);
  }

  /** Reads many files on all processors; what became of each, in the order of the files. */
  public static List<ReadRecord> readAll(List<Path> files) {
    return files.parallelStream().map(RecordStore::attempt).toList();
  }

  private static ReadRecord attempt(Path file) {
    try {
      return new ReadRecord(file, recordOf(file), null);
    } catch (RecordException unusable) {
      return new ReadRecord(file, null, unusable);
    }
  }

  /**
   * Reads one record file, in this folder or elsewhere.
   *
   * @throws RecordException where it cannot be read or is not a valid record
   */
  public CellRecord read(Path file) throws RecordException {
    return recordOf(file);
  }

  private static CellRecord recordOf(Path file) throws RecordException {
    return RecordJson.read(text(file, bytes(file)), file.toString());
  }

  private static byte[] bytes(Path file) throws RecordException {
    try {
      return Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      throw new RecordException(file + " does not exist; check the name", e);
    } catch (IOException e) {
      throw new RecordException(
          file + " cannot be read (" + reason(e) + "); check that it is a file you may read", e);
    }
  }

  private static String text(Path file, byte[] bytes) throws RecordException {
    String text = new String(bytes, StandardCharsets.UTF_8);
    if (text.indexOf(REPLACED) < 0) {
      return text;
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new RecordException(
          file + " is not in UTF-8, so it is no record; save it as UTF-8 or read the sheet again",
          e);
    }
  }

  private static String validText(CellRecord record) throws RecordException {
    String json;
    try {
      json = RecordJson.write(record);
    } catch (IllegalArgumentException e) {
      throw new RecordException(invalid(record, e.getMessage()), e);
    }
    List<String> problems = RecordValidator.problems(json);
    if (!problems.isEmpty()) {
      throw new RecordException(invalid(record, RecordValidator.summary(problems)));
    }
    return json;
  }

  private static String invalid(CellRecord record, String problem) {
    return "the record \"" + record.id() + "\" is not written, because it is not valid: " + problem;
  }

  private void refuseConflict(Path file, CellRecord record) throws RecordException {
    if (Files.notExists(file)) {
      return;
    }
    CellRecord earlier;
    try {
      earlier = read(file);
    } catch (RecordException e) {
      throw new RecordException(
          "not written over, since it may hold someone's work: "
              + e.getMessage()
              + " Repair it, or move it away.",
          e);
    }
    if (!earlier.review().state().equals(Review.DRAFT_STATE)) {
      boolean approved = earlier.review().state().equals(Review.APPROVED);
      throw conflict(file, approved ? "is approved" : "was approved before");
    }
    if (!record.statements().containsAll(settledStatements(earlier))
        || !record.curves().containsAll(settledCurves(earlier))) {
      throw conflict(file, "holds values that a person has confirmed, corrected or rejected");
    }
    if (!record.review().steps().containsAll(earlier.review().steps())) {
      throw conflict(file, "holds what a person has said to it");
    }
    Source before = earlier.source();
    if (!before.isSameFileAs(record.source())
        && (!before.isDocument() || !before.file().equals(record.source().file()))) {
      throw conflict(file, "is the record of another sheet, " + before.named());
    }
  }

  private static List<Statement> settledStatements(CellRecord record) {
    return record.statements().stream().filter(s -> s.standing().isSettled()).toList();
  }

  private static List<Curve> settledCurves(CellRecord record) {
    return record.curves().stream().filter(c -> c.standing().isSettled()).toList();
  }

  private static RecordException conflict(Path file, String why) {
    return new RecordException(
        file + " " + why + ", so it is not written over; move it away or write to another folder");
  }

  /** Hidden files are not records: an interrupted run can leave the part of one. */
  private static boolean isRecordFile(Path file) {
    String name = file.getFileName().toString();
    return name.endsWith(EXTENSION) && !name.startsWith(".") && Files.isRegularFile(file);
  }

  /** What the system says, without the path that the sentence already names. */
  private static String reason(IOException e) {
    String said = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
    if (said != null) {
      return said;
    }
    String kind = e.getClass().getSimpleName().replaceAll("Exception$", "");
    return kind.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }
}
