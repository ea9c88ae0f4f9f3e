package wherefrom.job.change;

import java.util.Optional;
import java.util.TreeMap;
import wherefrom.job.EngineJob;
import wherefrom.job.MadeChanges;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.OneCam;

/**
 * Counts the cams that an engine has had bought or reground for it: a change to another cam, or the
 * next one after a lobe has failed, is one more.
 */
public final class Cams {
  private final TreeMap<Long, Integer> numbers = new TreeMap<>();
  private Optional<ChangeKind> cam = Optional.empty();
  private boolean failed;
  private int count;

  public Cams(EngineJob job) {
    MadeChanges.of(job).forEach(made -> take(made.change().kind(), made.sequence()));
  }

  private void take(ChangeKind kind, long sequence) {
    if (OneCam.isDecidedBy(kind)) {
      count = next(kind);
      cam = Optional.of(kind);
      failed = false;
      numbers.put(sequence, count);
    } else if (kind == ChangeKind.LOBE_FAILED) {
      failed = true;
      numbers.put(sequence, count + 1);
    }
  }

  /** Which one the change of this entry asks for. */
  public int of(long sequence) {
    return numbers.getOrDefault(sequence, 1);
  }

  /** Which one such a change would ask for next. */
  public int next(ChangeKind kind) {
    boolean same = !failed && cam.filter(last -> !OneCam.forbids(last, kind)).isPresent();
    return same ? count : count + 1;
  }
}
