package wherefrom.job.ports;

import wherefrom.job.By;
import wherefrom.job.settings.ServerAddress;

/** Shops whose jobs lie on a shared server. */
@FunctionalInterface
public interface Servers {
  /** For where there are none, as in tests. */
  Servers NONE =
      (services, address, by) -> {
        throw new IllegalArgumentException("There are no shared servers here.");
      };

  /**
   * The services of such a shop. Nothing is asked of the server yet.
   *
   * @param folders the services of this machine
   * @param by the bench that is wanted, and who is at it
   */
  Services on(Services folders, ServerAddress address, By by);
}
