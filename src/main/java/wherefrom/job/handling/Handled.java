package wherefrom.job.handling;

import wherefrom.job.PartRecord;

/** What came of handling a part on the bench. */
public sealed interface Handled {

  /** It is logged; the part as it is now. */
  record Logged(PartRecord part) implements Handled {}

  /** It cannot be so, and nothing was logged; the sentence says why and what to do. */
  record Refused(String sentence) implements Handled {}
}
