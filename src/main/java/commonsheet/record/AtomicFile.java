package commonsheet.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Writes a file so that it is there whole or as it was before, whatever happens in between. */
public final class AtomicFile {
  private AtomicFile() {}

  /**
   * Writes beside the target, makes sure the bytes are on the disk, then takes the target's name.
   *
   * @throws IOException where that fails; then the target is unchanged and nothing is left beside
   *     it
   */
  public static void write(Path target, byte[] content) throws IOException {
    Path part =
        target.resolveSibling("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
    try {
      try (FileChannel channel =
          FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
        channel.force(true);
      }
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      discard(part, e);
      throw e;
    }
  }

  private static void discard(Path part, IOException reason) {
    try {
      Files.deleteIfExists(part);
    } catch (IOException e) {
      reason.addSuppressed(e);
    }
  }
}
