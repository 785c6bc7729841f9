package commonsheet.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder of results that can be had again for some work, up to a size; what was not used for the
 * longest time goes first. It never fails: what cannot be read is not there, what cannot be written
 * is not kept. Several programs may use it at a time.
 */
final class KeptFiles {
  private static final String ENDING = ".kept";
  private static final String UNFINISHED = ".part";

  /** After this a file that was never finished is nobody's. */
  private static final Duration ABANDONED = Duration.ofHours(1);

  /** Share of the size that is left when something has to go, so that it has not to each time. */
  private static final double LEFT = 0.9;

  private final Path folder;
  private final long mostBytes;

  KeptFiles(Path folder, long mostBytes) {
    this.folder = folder;
    this.mostBytes = mostBytes;
  }

  /** What was kept under a key; null for nothing. */
  byte[] find(String key) {
    Path file = file(key);
    try {
      byte[] bytes = Files.readAllBytes(file);
      Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
      return bytes;
    } catch (IOException missing) {
      return null;
    }
  }

  /** Keeps something under a key, if the folder can be written to. */
  void keep(String key, byte[] bytes) {
    try {
      prepare();
      Path part = Files.createTempFile(folder, "", UNFINISHED);
      try {
        Files.write(part, bytes);
        Files.move(
            part, file(key), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(part);
      }
      prune();
    } catch (IOException | UncheckedIOException notKept) {
      // It will be worked out again.
      return;
    }
  }

  /** Forgets what is kept under a key. */
  void forget(String key) {
    try {
      Files.deleteIfExists(file(key));
    } catch (IOException stays) {
      // Whoever reads it finds it damaged again.
      return;
    }
  }

  private void prepare() throws IOException {
    if (Files.isDirectory(folder)) {
      return;
    }
    boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    if (posix) {
      // Sheets may be confidential, and so are their words.
      Files.createDirectories(
          folder,
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
    } else {
      Files.createDirectories(folder);
    }
  }

  private record Kept(Path file, long bytes, Instant used) {
    static Kept of(Path file) {
      try {
        return new Kept(file, Files.size(file), Files.getLastModifiedTime(file).toInstant());
      } catch (IOException gone) {
        return new Kept(file, 0, Instant.EPOCH);
      }
    }
  }

  private void prune() throws IOException {
    List<Kept> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      files.map(Kept::of).forEach(all::add);
    }
    Instant past = Instant.now().minus(ABANDONED);
    for (Kept each : all) {
      if (each.file().toString().endsWith(UNFINISHED) && each.used().isBefore(past)) {
        Files.deleteIfExists(each.file());
      }
    }
    all.removeIf(each -> !each.file().toString().endsWith(ENDING));
    long bytes = all.stream().mapToLong(Kept::bytes).sum();
    if (bytes <= mostBytes) {
      return;
    }
    all.sort(Comparator.comparing(Kept::used));
    for (Kept each : all) {
      if (bytes > LEFT * mostBytes) {
        Files.deleteIfExists(each.file());
        bytes -= each.bytes();
      }
    }
  }

  private Path file(String key) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
      return folder.resolve(HexFormat.of().formatHex(digest) + ENDING);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
