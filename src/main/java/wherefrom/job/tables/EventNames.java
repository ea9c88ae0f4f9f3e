package wherefrom.job.tables;

import java.util.Locale;
import wherefrom.job.entry.JobEntry;

/** What entries are called in the table of events: as in the logbook's own file. */
public final class EventNames {
  private EventNames() {}

  /** {@code part-out}. */
  public static String of(Class<? extends JobEntry> kind) {
    return kind.getSimpleName().replaceAll("(?<!^)(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }
}
