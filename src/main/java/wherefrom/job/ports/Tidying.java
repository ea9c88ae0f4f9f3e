package wherefrom.job.ports;

import java.time.Instant;
import wherefrom.job.settings.Settings;

/** Removes what kills left behind: in the shop, beside the settings, among the second copies. */
public final class Tidying {
  private Tidying() {}

  /** To be done once at the start; only what is old and surely ours goes. */
  public static void all(Services services) {
    Settings settings = services.settings().load();
    Instant now = services.clock().instant();
    services.shelves().apply(settings.shop()).tidy();
    services.settings().tidy(now);
    settings.secondCopy().ifPresent(second -> services.backups().tidy(second, now));
  }
}
