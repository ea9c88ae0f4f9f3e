package wherefrom.job.tray;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.PartOut;
import wherefrom.parts.Whereabouts;

/** Logs the parts of a tray as out of the engine; each is a step of its own and can be undone. */
public final class TrayOut {
  private final OpenJob job;

  public TrayOut(OpenJob job) {
    this.job = job;
  }

  /**
   * Logs those that are still recorded as in the engine; a part that was logged since the picture
   * was read is left alone.
   *
   * @return the parts that were logged, as they are now
   */
  public List<PartRecord> log(Tray tray) {
    List<PartRecord> logged = new ArrayList<>();
    for (PartRecord part : tray.toLog()) {
      int item = part.part().item();
      if (job.asOne(() -> log(item))) {
        logged.add(job.state().getPart(item));
      }
    }
    return logged;
  }

  private boolean log(int item) {
    boolean inside = job.state().whereabouts(item) == Whereabouts.IN_ENGINE;
    if (inside) {
      job.record(new PartOut(item));
    }
    return inside;
  }
}
