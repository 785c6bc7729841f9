package commonsheet.api;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Does work for at most a given time. Work past its time is interrupted and left behind: the Java
 * machine cannot end it by force, and the process does not wait for it.
 */
public record TimeLimit(Duration limit) {
  /** Deeply nested PDF objects are walked by recursion; the usual 1 MiB runs out early. */
  private static final long STACK_BYTES = 8L << 20;

  /**
   * Does the work on a thread of its own.
   *
   * @throws TimeoutException if it takes too long
   * @throws ExecutionException if it fails, with the failure as its cause
   */
  public <T> T call(String name, Callable<T> work)
      throws InterruptedException, TimeoutException, ExecutionException {
    FutureTask<T> task = new FutureTask<>(work);
    Thread thread = new Thread(null, task, name, STACK_BYTES);
    thread.setDaemon(true);
    thread.start();
    try {
      return task.get(limit.toMillis(), TimeUnit.MILLISECONDS);
    } catch (TimeoutException late) {
      task.cancel(true);
      throw late;
    }
  }
}
