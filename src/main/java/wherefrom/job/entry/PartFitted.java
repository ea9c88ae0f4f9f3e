package wherefrom.job.entry;

import wherefrom.parts.Place;

/**
 * A part went into a place. A reason stands there only when it was fitted on purpose against a
 * stop, whose word is kept too.
 */
public record PartFitted(int item, Place place, String onPurpose, String against)
    implements JobEntry {

  /** Whether a stop was overruled. */
  public boolean wasOnPurpose() {
    return !onPurpose.isEmpty();
  }
}
