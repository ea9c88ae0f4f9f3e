package wherefrom.ui.shop;

import wherefrom.job.PartRecord;

/** Takes parts that are scanned, typed or tapped. */
interface PartReceiver {
  /** A part's tag was read, or its place was tapped. */
  ScanOutcome take(PartRecord part);

  /** A basket's tag was read. */
  default ScanOutcome basket(int number) {
    return ScanOutcome.ask("This is a basket's tag: scan the tag on a part.");
  }

  /** What to do now, in a sentence. */
  String prompt();
}
