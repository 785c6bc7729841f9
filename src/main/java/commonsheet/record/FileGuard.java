package commonsheet.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Lets one writer at a time at a file, among the threads of this program and among programs.
 *
 * <p>A hidden file beside it holds the lock. Whoever is done writes a byte into it, removes it and
 * lets go: another that waited for that very file sees the byte and begins anew, so that no two
 * hold locks of two files of one name. The system drops the lock of a killed program; the empty
 * file it leaves serves the next one. The file is looked at through the one channel only, since on
 * POSIX systems closing any other would drop the lock.
 */
final class FileGuard implements AutoCloseable {
  /** Locks between programs do not hold between the threads of one. */
  private static final ReentrantLock THREADS = new ReentrantLock();

  /** Beyond what is written, so that the file stays readable where locks forbid reading. */
  private static final long LOCKED_BYTE = 1L << 40;

  /** How often a file that is on its way out is looked at, every {@value #PAUSE} ms. */
  private static final int PATIENCE = 400;

  private static final long PAUSE = 5;

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
    boolean held = false;
    try {
      FileChannel channel = locked(mark);
      held = true;
      return new FileGuard(mark, channel);
    } finally {
      if (!held) {
        THREADS.unlock();
      }
    }
  }

  private static FileChannel locked(Path mark) throws IOException {
    for (int look = 0; ; look++) {
      FileChannel channel =
          FileChannel.open(
              mark, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
      boolean inUse = false;
      try {
        channel.lock(LOCKED_BYTE, 1, false);
        inUse = channel.size() == 0;
        if (inUse) {
          return channel;
        }
      } finally {
        if (!inUse) {
          channel.close();
        }
      }
      if (look == PATIENCE) {
        // Left by a program that was killed between the byte and the removal.
        Files.deleteIfExists(mark);
        look = 0;
      }
      pause();
    }
  }

  private static void pause() throws IOException {
    try {
      TimeUnit.MILLISECONDS.sleep(PAUSE);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted while waiting for another program", e);
    }
  }

  @Override
  public void close() throws IOException {
    try (channel) {
      channel.write(ByteBuffer.wrap(new byte[] {'-'}), 0);
      Files.deleteIfExists(mark);
    } finally {
      THREADS.unlock();
    }
  }
}
