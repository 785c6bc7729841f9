package commonsheet.cli;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;

/**
 * A value that is made ready beside other work, before it is needed. One thread makes them all, in
 * the order in which they were asked for, so that what is needed late does not hold up what is
 * needed soon.
 *
 * @param <T> what is made
 */
final class Ahead<T> {
  private static final ExecutorService THREAD =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "ahead");
            thread.setDaemon(true);
            return thread;
          });

  private final FutureTask<T> task;

  private Ahead(FutureTask<T> task) {
    this.task = task;
  }

  /** Runs something of which only the effect is wanted; the process does not wait for it to end. */
  static void run(Runnable work) {
    THREAD.execute(work);
  }

  /** Starts making a value; the process does not wait for it to end. */
  static <T> Ahead<T> of(Callable<T> maker) {
    FutureTask<T> task = new FutureTask<>(maker);
    THREAD.execute(task);
    return new Ahead<>(task);
  }

  /**
   * The value, as soon as it is ready.
   *
   * @throws IllegalStateException where making it failed, with the reason as its cause
   */
  T get() throws InterruptedException {
    try {
      return task.get();
    } catch (ExecutionException failure) {
      throw new IllegalStateException(FaultText.of(failure.getCause()), failure.getCause());
    }
  }
}
