package wherefrom.job;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Days as the person at the bench counts them: what is done at ten in the evening is done that day,
 * on paper as in the window.
 *
 * @param zone the clock's
 */
public record Days(ZoneId zone) {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter HOUR =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  public LocalDate date(Instant time) {
    return LocalDate.ofInstant(time, zone);
  }

  /** {@code 2026-05-04}. */
  public String day(Instant time) {
    return date(time).toString();
  }

  /** {@code 2026-05-04 21:30}. */
  public String time(Instant time) {
    return TIME.format(time.atZone(zone));
  }

  /** To the second with how far the zone is off: {@code 2026-05-04T21:30:00-04:00}. */
  public String stamp(Instant time) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time.atZone(zone));
  }

  /** {@code 21:30}. */
  public String hour(Instant time) {
    return HOUR.format(time.atZone(zone));
  }
}
