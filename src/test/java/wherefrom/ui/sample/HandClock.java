package wherefrom.ui.sample;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that a test turns. */
public final class HandClock extends Clock {
  private Instant now = SampleJob.CLOCK.instant();

  public void pass(Duration time) {
    now = now.plus(time);
  }

  @Override
  public Instant instant() {
    return now;
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return Clock.fixed(now, zone);
  }
}
