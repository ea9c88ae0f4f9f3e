package wherefrom.phone;

import com.sun.net.httpserver.HttpExchange;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/** Ends what comes too slowly: the connection is closed under whoever waits for more of a body. */
final class Deadlines {
  private final ScheduledExecutorService timer;
  private final LongSupplier nanos;
  private final long body;

  Deadlines(ScheduledExecutorService timer, LongSupplier nanos, Limits limits) {
    this.timer = timer;
    this.nanos = nanos;
    this.body = limits.body().toNanos();
  }

  /** A steady clock, in nanoseconds. */
  LongSupplier nanos() {
    return nanos;
  }

  /** A body that comes. */
  final class Running implements AutoCloseable {
    private final long begun = nanos.getAsLong();
    private final Future<?> end;

    private Running(HttpExchange request) {
      end = timer.schedule(request::close, body * 2, TimeUnit.NANOSECONDS);
    }

    boolean isLate() {
      return nanos.getAsLong() - begun > body;
    }

    @Override
    public void close() {
      end.cancel(false);
    }
  }

  Running begin(HttpExchange request) {
    return new Running(request);
  }
}
