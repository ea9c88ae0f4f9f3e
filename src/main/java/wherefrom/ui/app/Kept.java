package wherefrom.ui.app;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** What screens keep while the window is open, so that it outlives Back: one thing of each kind. */
public final class Kept {
  private final Map<Object, Object> things = new HashMap<>();
  private final Supplier<Path> job;

  /**
   * @param job the folder of the open job
   */
  Kept(Supplier<Path> job) {
    this.job = job;
  }

  /**
   * The one thing of a kind.
   *
   * @param fresh makes it where there is none yet
   */
  public <T> T keep(Class<T> kind, Supplier<T> fresh) {
    return kind.cast(things.computeIfAbsent(kind, missing -> fresh.get()));
  }

  /** Lets go of what was kept. */
  public void drop(Class<?> kind) {
    things.remove(kind);
  }

  /**
   * The one thing of a kind that is the open job's, so that what was typed outlives even another
   * job on the bench. It must not hold the job, which may be opened anew.
   *
   * @param fresh makes it where there is none yet
   */
  public <T> T keepOfJob(Class<T> kind, Supplier<T> fresh) {
    return kind.cast(things.computeIfAbsent(ofJob(kind), missing -> fresh.get()));
  }

  /** Lets go of what was kept of the open job. */
  public void dropOfJob(Class<?> kind) {
    things.remove(ofJob(kind));
  }

  private List<Object> ofJob(Class<?> kind) {
    return List.of(job.get(), kind);
  }
}
