package commonsheet.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;

/** Writes a result that is there whole or not at all. */
final class ResultFile {
  private ResultFile() {}

  /**
   * Writes a text in UTF-8, in place of an earlier file of that name.
   *
   * @throws CommandException where that cannot be done; an earlier file is then as it was
   */
  static void write(Path file, String text) throws CommandException {
    Path part = file.resolveSibling("." + file.getFileName() + "." + UUID.randomUUID() + ".part");
    try {
      if (file.toAbsolutePath().getParent() != null) {
        Files.createDirectories(file.toAbsolutePath().getParent());
      }
      try {
        Files.writeString(part, text);
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (IOException failure) {
      throw new CommandException(
          ExitStatus.NOT_WRITTEN,
          file + " could not be written (" + FaultText.of(failure) + "); name another file");
    }
  }
}
