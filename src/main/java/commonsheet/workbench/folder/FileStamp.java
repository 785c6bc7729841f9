package commonsheet.workbench.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;

/**
 * A file as it was at a time. While path, size and time of change are the same, what was worked out
 * from its content holds.
 */
public record FileStamp(Path path, long size, FileTime changed) {
  /** The file as it is now. */
  public static FileStamp of(Path path) throws IOException {
    return of(path, Files.readAttributes(path, BasicFileAttributes.class));
  }

  static FileStamp of(Path path, BasicFileAttributes attributes) {
    return new FileStamp(path, attributes.size(), attributes.lastModifiedTime());
  }
}
