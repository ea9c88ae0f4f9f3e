package wherefrom.job;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What rooms work out from a job's state, kept from when it is first asked for until the next
 * entry. What is still being worked out when an entry comes is kept for nobody.
 */
final class Remembered {
  private final EngineJob job;
  private volatile Map<Class<?>, Object> known = new ConcurrentHashMap<>();

  Remembered(EngineJob job) {
    this.job = job;
  }

  /** To be told of every entry, before it is taken in and after. */
  void forget() {
    if (!known.isEmpty()) {
      known = new ConcurrentHashMap<>();
    }
  }

  /** May ask for something else meanwhile, so nothing is locked. */
  <T> T get(Class<T> what, Function<? super EngineJob, ? extends T> maker) {
    Map<Class<?>, Object> now = known;
    @Nullable Object there = now.get(what);
    if (there != null) {
      return what.cast(there);
    }
    T made = maker.apply(job);
    now.put(what, made);
    return made;
  }
}
