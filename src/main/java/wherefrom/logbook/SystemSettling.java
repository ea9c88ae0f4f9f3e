package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * Settles on Linux by {@code sync -f}, which ends after syncfs(2) has. No other system has a call
 * that any user may make and that waits: there it says no.
 */
final class SystemSettling implements Settling {
  /** How long a slow USB drive is waited for. */
  private static final long MOST_MINUTES = 5;

  @Override
  public boolean settle(Path folder) {
    if (!System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("linux")) {
      return false;
    }
    try {
      Process sync =
          new ProcessBuilder("sync", "-f", folder.toAbsolutePath().toString())
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return sync.waitFor(MOST_MINUTES, TimeUnit.MINUTES) && sync.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
