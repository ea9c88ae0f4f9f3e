package wherefrom.job;

import java.io.IOException;

/** Keeps the settings of this machine. */
public interface SettingsStore {
  /** The settings as kept; fresh ones where there are none or they cannot be read. */
  Settings load();

  /**
   * Keeps the settings.
   *
   * @throws IOException with a plain sentence when they cannot be kept
   */
  void save(Settings settings) throws IOException;
}
