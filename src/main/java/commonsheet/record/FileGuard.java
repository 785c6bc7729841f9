package commonsheet.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Lets one writer at a time at a file, among the threads of this program and among programs. A
 * hidden file beside it holds the lock; it is removed afterwards, and one that a killed program
 * left does no harm, since the system drops the lock with the program.
 */
final class FileGuard implements AutoCloseable {
  /** Locks between programs do not hold between the threads of one. */
  private static final ReentrantLock THREADS = new ReentrantLock();

  /** Beyond what is written, so that the file itself stays readable where locks forbid reading. */
  private static final long LOCKED_BYTE = 1L << 40;

  private final Path mark;
  private final FileChannel channel;

  private FileGuard(Path mark, FileChannel channel) {
    this.mark = mark;
    this.channel = channel;
  }

  /** Waits for its turn. */
  static FileGuard of(Path file) throws IOException {
    Path mark = file.resolveSibling("." + file.getFileName() + ".lock");
    THREADS.lock();
    try {
      while (true) {
        FileChannel channel =
            FileChannel.open(mark, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = locked(channel);
        if (lock.isValid() && isStill(mark, channel)) {
          return new FileGuard(mark, channel);
        }
        channel.close();
      }
    } catch (IOException | RuntimeException e) {
      THREADS.unlock();
      throw e;
    }
  }

  private static FileLock locked(FileChannel channel) throws IOException {
    try {
      return channel.lock(LOCKED_BYTE, 1, false);
    } catch (IOException e) {
      channel.close();
      throw e;
    }
  }

  /** Whether the file that is locked has not been removed by whoever held the lock before. */
  private static boolean isStill(Path mark, FileChannel channel) throws IOException {
    try {
      // A writer writes its own number into the file it locked, so that it knows it again.
      byte[] number = UUID.randomUUID().toString().getBytes(StandardCharsets.US_ASCII);
      channel.write(ByteBuffer.wrap(number), 0);
      return Arrays.equals(number, Files.readAllBytes(mark));
    } catch (NoSuchFileException removed) {
      return false;
    }
  }

  @Override
  public void close() throws IOException {
    try {
      Files.deleteIfExists(mark);
      channel.close();
    } finally {
      THREADS.unlock();
    }
  }
}
