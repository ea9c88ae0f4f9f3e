package wherefrom.job.settings;

import java.util.Optional;
import wherefrom.job.By;

/**
 * Where this machine stands in the shop.
 *
 * @param server where the jobs lie; empty where they lie in a folder of this machine
 * @param by the bench that this machine is, and who works at it
 */
public record Workplace(Optional<ServerAddress> server, By by) {
  /** One bench, whose jobs lie in a folder. */
  public static final Workplace ALONE = new Workplace(Optional.empty(), By.FIRST);

  public Workplace on(Optional<ServerAddress> where) {
    return new Workplace(where, by);
  }

  public Workplace by(By bench) {
    return new Workplace(server, bench);
  }
}
