package wherefrom.job.ports;

import java.time.Instant;
import wherefrom.job.settings.Settings;

/** Removes what kills left behind: in the shop, beside the settings, among the second copies. */
public final class Tidying {
  private Tidying() {}

  /** To be done once at the start; only what is old and surely ours goes. */
  public static void all(Equipment equipment) {
    Settings settings = equipment.settings().load();
    Instant now = equipment.clock().instant();
    equipment.shelves().apply(settings.shop()).tidy();
    equipment.settings().tidy(now);
    settings.secondCopy().ifPresent(second -> equipment.backups().tidy(second, now));
  }
}
