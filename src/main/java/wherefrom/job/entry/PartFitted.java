package wherefrom.job.entry;

import java.util.Optional;
import wherefrom.parts.Place;
import wherefrom.rules.VerdictName;

/**
 * A part went into a place. A reason stands there only when it was fitted on purpose against a
 * stop; which verdict that was is kept too.
 */
public record PartFitted(int item, Place place, String onPurpose, Optional<VerdictName> against)
    implements JobEntry {
  /** A part that went in with nothing against it. */
  public PartFitted(int item, Place place) {
    this(item, place, "", Optional.empty());
  }

  /** Whether a stop was overruled. */
  public boolean wasOnPurpose() {
    return !onPurpose.isEmpty();
  }
}
