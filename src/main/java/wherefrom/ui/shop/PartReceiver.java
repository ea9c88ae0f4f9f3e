package wherefrom.ui.shop;

import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.job.PartRecord;

/** Takes parts that are scanned, typed or tapped. */
interface PartReceiver {
  /** A part's tag was read, or its place was tapped. */
  ScanOutcome take(PartRecord part);

  /** A basket's tag was read. */
  default ScanOutcome basket(int number) {
    return ScanOutcome.refused("This is a basket's tag: scan the tag on a part.");
  }

  /** The tag of a bag or a big part was read; empty where it means nothing of its own here. */
  default Optional<ScanOutcome> beside(Subject.Beside what) {
    return Optional.empty();
  }

  /** What to do now, in a sentence. */
  String prompt();

  /** The same in one line of large letters. */
  default String briefPrompt() {
    return prompt();
  }
}
