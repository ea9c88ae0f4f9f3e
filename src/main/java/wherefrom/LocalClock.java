package wherefrom;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;

/**
 * The system's clock in the system's time zone. The zone is read when it is asked for and not
 * before: reading the table of all zones is work that the first window does not need.
 */
final class LocalClock extends Clock {
  @Override
  public ZoneId getZone() {
    return ZoneId.systemDefault();
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return Clock.system(zone);
  }

  @Override
  public long millis() {
    return System.currentTimeMillis();
  }

  @Override
  public Instant instant() {
    return Clock.systemUTC().instant();
  }
}
