package wherefrom.ui.running;

import java.util.Optional;
import wherefrom.job.entry.RunInStopped;
import wherefrom.ui.app.Kept;

/**
 * What was put right after a fault, until the engine runs again: the clock begins by that press.
 */
final class PutRight {
  private Optional<RunInStopped> after = Optional.empty();
  private String words = "";

  static PutRight of(Kept kept) {
    return kept.keepOfJob(PutRight.class, PutRight::new);
  }

  void say(RunInStopped stop, String what) {
    after = Optional.of(stop);
    words = what.strip();
  }

  /** What was said after this very stop; empty where nothing was. */
  String words(Optional<RunInStopped> stop) {
    return stop.isPresent() && stop.equals(after) ? words : "";
  }
}
