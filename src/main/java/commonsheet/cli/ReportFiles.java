package commonsheet.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes several files that belong together, into a folder or a ZIP file. */
final class ReportFiles {
  /** The earliest time that ZIP can hold, so that equal content gives equal files. */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  private ReportFiles() {}

  /** Whether the name asks for one ZIP file rather than a folder. */
  static boolean isArchive(Path out) {
    return out.toString().toLowerCase(Locale.ROOT).endsWith(".zip");
  }

  /**
   * Writes the files, all of them to the disk before any takes its name. Other files of a folder
   * that is there stay.
   *
   * @param files content by path with slashes
   * @throws CommandException where that cannot be done
   */
  static void write(Path out, Map<String, byte[]> files) throws CommandException {
    if (isArchive(out)) {
      ResultFile.write(out, archive(files));
      return;
    }
    Path folder = out.toAbsolutePath().normalize();
    Path part =
        folder.resolveSibling("." + folder.getFileName() + "." + UUID.randomUUID() + ".part");
    try {
      try {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
          Path path = part.resolve(file.getKey());
          Files.createDirectories(path.getParent());
          Files.write(path, file.getValue());
        }
        for (String name : files.keySet()) {
          Path target = folder.resolve(name);
          Files.createDirectories(target.getParent());
          Files.move(part.resolve(name), target, StandardCopyOption.ATOMIC_MOVE);
        }
      } finally {
        discard(part);
      }
    } catch (IOException failure) {
      throw new CommandException(
          ExitStatus.NOT_WRITTEN,
          out + " could not be written (" + FaultText.of(failure) + "); name another folder");
    }
  }

  private static byte[] archive(Map<String, byte[]> files) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        ZipEntry entry = new ZipEntry(file.getKey());
        entry.setTimeLocal(TIME);
        zip.putNextEntry(entry);
        zip.write(file.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory does not fail", e);
    }
    return bytes.toByteArray();
  }

  private static void discard(Path part) throws IOException {
    if (!Files.exists(part)) {
      return;
    }
    Files.walkFileTree(
        part,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path folder, IOException failure)
              throws IOException {
            Files.delete(folder);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
