package wherefrom.job.handling;

import wherefrom.job.PartRecord;

/** What came of handling a part on the bench. */
public sealed interface HandlingOutcome {

  /** It is logged; the part as it is now. */
  record Logged(PartRecord part) implements HandlingOutcome {}

  /** It cannot be so, and nothing was logged; the sentence says why and what to do. */
  record Refused(String sentence) implements HandlingOutcome {}
}
