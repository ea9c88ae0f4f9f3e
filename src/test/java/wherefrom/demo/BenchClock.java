package wherefrom.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that goes on by some seconds each time it is looked at, and by days when told. */
final class BenchClock extends Clock {
  private static final Duration STEP = Duration.ofSeconds(95);

  private Instant now;

  BenchClock(Instant start) {
    now = start;
  }

  void pass(Duration time) {
    now = now.plus(time);
  }

  @Override
  public Instant instant() {
    now = now.plus(STEP);
    return now;
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return this;
  }
}
