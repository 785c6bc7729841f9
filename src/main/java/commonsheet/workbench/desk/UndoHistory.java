package commonsheet.workbench.desk;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.record.AtomicFile;
import commonsheet.record.RecordStore;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * Earlier contents of record files, kept in a hidden folder beside them. Nothing else needs it and
 * it can be deleted at any time. A content is named by its hash and looked at before it is used, so
 * that whatever happened to a file of the history, a record never becomes anything it has not been.
 */
final class UndoHistory {
  /** The hidden folder of the records' folder. */
  static final String HIDDEN = ".commonsheet";

  private static final String UNDO = "undo";
  private static final String STEPS = "steps";
  private static final String ENDING = ".gz";
  private static final Pattern VERSION = Pattern.compile("[0-9a-f]{64}");
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Far beyond any record or list of steps; bytes. */
  private static final int LARGEST = 64 * 1024 * 1024;

  private final Path folder;

  /**
   * The history of a folder's records.
   *
   * @param folder its real path
   */
  UndoHistory(Path folder) {
    this.folder = folder;
  }

  /** What can be undone and done again at a file of this version. */
  Undoable at(Path file, String version) {
    UndoSteps steps = steps(file);
    UndoSteps.Step last = steps.leadingTo(version);
    UndoSteps.Step next = steps.after(version);
    boolean back = last != null && isKept(file, steps.before(version));
    boolean forth = next != null && isKept(file, next.version());
    return new Undoable(
        back ? last.what() : null,
        back ? last.by() : null,
        forth ? next.what() : null,
        forth ? next.by() : null);
  }

  /**
   * Keeps the content that is about to be replaced.
   *
   * @param content of the file as it is now
   * @param step what is about to be done, with the version that the file is going to have
   */
  void ahead(Path file, byte[] content, UndoSteps.Step step) throws IOException {
    keep(file, content);
    UndoSteps steps = steps(file).with(RecordStore.versionOf(content), step);
    AtomicFile.write(own(file).resolve(STEPS), JSON.writeValueAsBytes(steps));
    forgetOthers(file, steps);
  }

  /** Keeps a content of a file, so that it can be come back to. */
  void keep(Path file, byte[] content) throws IOException {
    Path kept = made(file).resolve(RecordStore.versionOf(content) + ENDING);
    if (Files.notExists(kept)) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (GZIPOutputStream packed = new GZIPOutputStream(bytes)) {
        packed.write(content);
      }
      AtomicFile.write(kept, bytes.toByteArray());
    }
  }

  /** The content before that of a version, or null where there is none. */
  byte[] before(Path file, String version) {
    return content(file, steps(file).before(version));
  }

  /** The content that was undone, coming back to a version; null where there is none. */
  byte[] after(Path file, String version) {
    UndoSteps.Step next = steps(file).after(version);
    return next == null ? null : content(file, next.version());
  }

  private boolean isKept(Path file, String version) {
    return Files.isRegularFile(own(file).resolve(version + ENDING), LinkOption.NOFOLLOW_LINKS);
  }

  private byte[] content(Path file, String version) {
    if (version == null || !isKept(file, version)) {
      return null;
    }
    Path kept = own(file).resolve(version + ENDING);
    try (GZIPInputStream packed =
        new GZIPInputStream(new ByteArrayInputStream(Files.readAllBytes(kept)))) {
      byte[] content = packed.readNBytes(LARGEST);
      return RecordStore.versionOf(content).equals(version) ? content : null;
    } catch (IOException damaged) {
      return null;
    }
  }

  /** None where there is no history, or one that is damaged. */
  private UndoSteps steps(Path file) {
    Path list = own(file).resolve(STEPS);
    try {
      if (!Files.isRegularFile(list, LinkOption.NOFOLLOW_LINKS) || Files.size(list) > LARGEST) {
        return UndoSteps.NONE;
      }
      UndoSteps steps = JSON.readValue(Files.readAllBytes(list), UndoSteps.class);
      boolean sound =
          steps.steps().stream()
              .allMatch(
                  step -> step.version() != null && VERSION.matcher(step.version()).matches());
      return sound ? steps : UndoSteps.NONE;
    } catch (JsonProcessingException damaged) {
      return UndoSteps.NONE;
    } catch (IOException unreadable) {
      return UndoSteps.NONE;
    }
  }

  private Path own(Path file) {
    return folder.resolve(HIDDEN).resolve(UNDO).resolve(folder.relativize(file).toString());
  }

  /** The folder of a file's history, made where it is missing; never one outside of the folder. */
  private Path made(Path file) throws IOException {
    Path own = own(file);
    Path at = folder;
    for (Path part : folder.relativize(own)) {
      at = at.resolve(part);
      if (Files.isSymbolicLink(at)) {
        throw new IOException(at + " is a link to another place");
      }
    }
    boolean first = Files.notExists(folder.resolve(HIDDEN));
    Files.createDirectories(own);
    if (first) {
      // Version control of records is for records.
      Files.write(
          folder.resolve(HIDDEN).resolve(".gitignore"), "*\n".getBytes(StandardCharsets.UTF_8));
    }
    return own;
  }

  /** Removes contents that no step names, and what killed programs have left. */
  private void forgetOthers(Path file, UndoSteps steps) throws IOException {
    List<Path> all;
    try (Stream<Path> entries = Files.list(own(file))) {
      all = entries.filter(Files::isRegularFile).toList();
    }
    for (Path each : all) {
      String name = each.getFileName().toString();
      boolean named =
          name.equals(STEPS)
              || (name.endsWith(ENDING)
                  && steps.names(name.substring(0, name.length() - ENDING.length())));
      if (!named) {
        Files.deleteIfExists(each);
      }
    }
  }
}
