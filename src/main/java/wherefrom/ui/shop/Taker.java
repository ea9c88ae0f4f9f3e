package wherefrom.ui.shop;

import wherefrom.job.PartRecord;

/** Takes parts that are scanned, typed or tapped. */
interface Taker {
  /** A part's tag was read, or its place was tapped. */
  Came take(PartRecord part);

  /** A basket's tag was read. */
  default Came basket(int number) {
    return Came.ask("This is a basket's tag: scan the tag on a part.");
  }

  /** What to do now, in a sentence. */
  String prompt();
}
