package commonsheet.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.function.LongSupplier;

/** Says now and then how far a long run has come; a short run passes without a word. */
final class Progress {
  private static final long EVERY_NANOS = Duration.ofSeconds(5).toNanos();

  private final PrintWriter err;
  private final int total;
  private final LongSupplier clock;
  private long last;
  private int done;

  Progress(PrintWriter err, int total, LongSupplier clock) {
    this.err = err;
    this.total = total;
    this.clock = clock;
    this.last = clock.getAsLong();
  }

  /** One more file is done with. */
  void step() {
    done++;
    long now = clock.getAsLong();
    if (done < total && now - last >= EVERY_NANOS) {
      last = now;
      err.println("commonsheet: " + done + " of " + total + " files done");
      err.flush();
    }
  }
}
