package wherefrom.ui.app;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Dates in words. */
public final class Dates {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private static final DateTimeFormatter BRIEF =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

  private Dates() {}

  /** {@code 4 May}. */
  public static String day(Instant time, Clock clock) {
    return BRIEF.format(LocalDate.ofInstant(time, clock.getZone()));
  }

  /** Whole days since then, as the clock's own time zone counts them; 0 for today. */
  public static long daysAgo(Instant time, Clock clock) {
    LocalDate then = LocalDate.ofInstant(time, clock.getZone());
    LocalDate today = LocalDate.ofInstant(clock.instant(), clock.getZone());
    return Math.max(0, ChronoUnit.DAYS.between(then, today));
  }

  /** {@code today}, {@code yesterday} or {@code 21 days ago}. */
  public static String brief(Instant time, Clock clock) {
    long days = daysAgo(time, clock);
    return days == 0 ? "today" : days == 1 ? "yesterday" : days + " days ago";
  }

  /** {@code 4 May 2026, 21 days ago}; the days as the clock's own time zone counts them. */
  public static String ago(Instant time, Clock clock) {
    LocalDate then = LocalDate.ofInstant(time, clock.getZone());
    LocalDate today = LocalDate.ofInstant(clock.instant(), clock.getZone());
    long days = ChronoUnit.DAYS.between(then, today);
    String date = DAY.format(then);
    if (days <= 0) {
      return date + ", today";
    }
    return days == 1 ? date + ", yesterday" : date + ", " + days + " days ago";
  }
}
