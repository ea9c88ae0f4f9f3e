package wherefrom.job.phone;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.UnsentException;

/**
 * The acts of a phone that were sent while the store was out of reach. What became of one is known
 * by its own id, so that no other is answered in its place, and none is done twice.
 */
final class LostActs {
  private record Lost(String act, UnsentException said) {}

  private final OpenJob job;
  private final Map<String, LoggedEntry> kept = new HashMap<>();
  private Optional<Lost> lost = Optional.empty();
  private Optional<LoggedEntry> untold = Optional.empty();

  LostActs(OpenJob job) {
    this.job = job;
  }

  /**
   * Settles what is lost, whichever act it was.
   *
   * @param act what is asked for now
   * @return the entry that this very act has written already
   * @throws UnsentException when the store is still out of reach
   */
  Optional<LoggedEntry> settle(String act) {
    if (lost.isPresent()) {
      Lost one = lost.get();
      Optional<LoggedEntry> written = job.settle(one.said());
      lost = Optional.empty();
      written.ifPresent(entry -> kept.put(one.act(), entry));
      untold = written.filter(entry -> !one.act().equals(act));
    }
    return Optional.ofNullable(kept.get(act));
  }

  /** An act that was written though another was asked for since; told once. */
  Optional<LoggedEntry> takeUntold() {
    Optional<LoggedEntry> told = untold;
    untold = Optional.empty();
    return told;
  }

  /** Does an act; where it is lost on the way, that is remembered by its id. */
  <T> T watched(String act, Supplier<T> deed) {
    try {
      return deed.get();
    } catch (UnsentException e) {
      lost = Optional.of(new Lost(act, e));
      throw e;
    }
  }
}
