package wherefrom.job.settings;

import java.io.IOException;
import java.time.Instant;
import java.util.List;

/** Keeps the settings of this machine. */
public interface SettingsStore {
  /** The settings as kept; a fresh one for each that is not there or cannot be used. */
  Settings load();

  /** What was wrong with the settings when they were loaded, a sentence each. */
  default List<String> faults() {
    return List.of();
  }

  /**
   * Keeps the settings.
   *
   * @throws IOException with a plain sentence when they cannot be kept
   */
  void save(Settings settings) throws IOException;

  /** Removes what a kill left behind beside the settings, where it is old and surely ours. */
  default void tidy(Instant now) {}
}
