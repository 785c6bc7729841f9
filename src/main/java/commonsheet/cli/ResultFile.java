package commonsheet.cli;

import commonsheet.record.AtomicFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a result that is there whole or not at all. */
final class ResultFile {
  private ResultFile() {}

  /**
   * Writes a text in UTF-8, in place of an earlier file of that name.
   *
   * @throws CommandException where that cannot be done; an earlier file is then as it was
   */
  static void write(Path file, String text) throws CommandException {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Writes bytes in the same way. */
  static void write(Path file, byte[] content) throws CommandException {
    try {
      if (file.toAbsolutePath().getParent() != null) {
        Files.createDirectories(file.toAbsolutePath().getParent());
      }
      AtomicFile.write(file, content);
    } catch (IOException failure) {
      throw new CommandException(
          ExitStatus.NOT_WRITTEN,
          file + " could not be written (" + FaultText.of(failure) + "); name another file");
    }
  }
}
