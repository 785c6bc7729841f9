package commonsheet.cli;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * A value that is made ready on a thread of its own, beside other work, before it is needed.
 *
 * @param <T> what is made
 */
final class Ahead<T> {
  private final FutureTask<T> task;

  private Ahead(FutureTask<T> task) {
    this.task = task;
  }

  /** Starts making a value; the process does not wait for it to end. */
  static <T> Ahead<T> of(Callable<T> maker) {
    FutureTask<T> task = new FutureTask<>(maker);
    Thread thread = new Thread(task, "ahead");
    thread.setDaemon(true);
    thread.start();
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
