package commonsheet.workbench.folder;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Looks through a folder once; what it needs to know of a file comes with its name. */
final class FilesBelow extends SimpleFileVisitor<Path> {
  private final Path folder;
  private final Pattern names;
  private final List<FileStamp> found = new ArrayList<>();

  private FilesBelow(Path folder, Pattern names) {
    this.folder = folder;
    this.names = names;
  }

  /**
   * The files whose names are as given, sorted by path; nothing hidden, and no links, which can
   * lead out of the folder. What may not be read is passed over.
   */
  static List<FileStamp> of(Path folder, int depth, Pattern names) {
    FilesBelow search = new FilesBelow(folder, names);
    try {
      Files.walkFileTree(folder, Set.<FileVisitOption>of(), depth, search);
    } catch (IOException unreadable) {
      return List.of();
    }
    search.found.sort(Comparator.comparing(FileStamp::path));
    return search.found;
  }

  @Override
  public FileVisitResult preVisitDirectory(Path entered, BasicFileAttributes attributes) {
    return isHidden(entered) && !entered.equals(folder)
        ? FileVisitResult.SKIP_SUBTREE
        : FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
    if (attributes.isRegularFile()
        && !isHidden(file)
        && names.matcher(file.getFileName().toString()).matches()) {
      found.add(FileStamp.of(file, attributes));
    }
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFileFailed(Path file, IOException unreadable) {
    return FileVisitResult.CONTINUE;
  }

  private static boolean isHidden(Path file) {
    Path name = file.getFileName();
    return name != null && name.toString().startsWith(".");
  }
}
