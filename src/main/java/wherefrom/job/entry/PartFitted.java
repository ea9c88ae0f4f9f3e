package wherefrom.job.entry;

import java.util.Optional;
import wherefrom.parts.Place;
import wherefrom.rules.VerdictName;

/**
 * A part went into a place. A reason stands there only when it was fitted on purpose against a
 * stop; which verdict that was is kept too.
 *
 * @param untagged whether it had no tag, and was told by a person: nothing proves which part it is
 */
public record PartFitted(
    int item, Place place, String onPurpose, Optional<VerdictName> against, boolean untagged)
    implements JobEntry {
  /** A part whose tag was read. */
  public PartFitted(int item, Place place, String onPurpose, Optional<VerdictName> against) {
    this(item, place, onPurpose, against, false);
  }

  /** A part that went in with nothing against it. */
  public PartFitted(int item, Place place) {
    this(item, place, "", Optional.empty());
  }

  /** Whether a stop was overruled. */
  public boolean wasOnPurpose() {
    return !onPurpose.isEmpty();
  }
}
