package commonsheet.record;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What programs that were killed while they wrote have left beside record files. */
public final class Leftovers extends SimpleFileVisitor<Path> {
  /**
   * The names that {@link AtomicFile} and {@link FileGuard} give to what stands there meanwhile.
   */
  private static final Pattern NAME =
      Pattern.compile(
          "\\.([^.].*\\.json)\\.(?:lock|[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.(part))");

  private final Path folder;

  private Leftovers(Path folder) {
    this.folder = folder;
  }

  /**
   * Removes them from a folder and its folders. Nobody who is writing at this time is disturbed.
   *
   * @param depth how many folders deep
   */
  public static void remove(Path folder, int depth) {
    try {
      Files.walkFileTree(folder, Set.of(), depth, new Leftovers(folder));
    } catch (IOException unreadable) {
      // They do no harm; the next start tries again.
      return;
    }
  }

  @Override
  public FileVisitResult preVisitDirectory(Path entered, BasicFileAttributes attributes) {
    boolean hidden = entered.getFileName().toString().startsWith(".") && !entered.equals(folder);
    return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
    Matcher name = NAME.matcher(file.getFileName().toString());
    if (attributes.isRegularFile() && name.matches()) {
      // Who holds the guard is the only one to write; letting it go removes the lock.
      try (FileGuard guard = FileGuard.of(file.resolveSibling(name.group(1)))) {
        if (name.group(2) != null) {
          Files.deleteIfExists(file);
        }
      } catch (IOException kept) {
        return FileVisitResult.CONTINUE;
      }
    }
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFileFailed(Path file, IOException unreadable) {
    return FileVisitResult.CONTINUE;
  }
}
