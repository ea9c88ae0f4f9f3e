package wherefrom.job.bags;

/** What came of something that was done with a bag or a big part. */
public sealed interface BagOutcome {

  /** For the person, with a full stop. */
  String sentence();

  /** It is logged. */
  record Logged(String sentence) implements BagOutcome {}

  /** Nothing was logged: something speaks against it, and it can be done all the same. */
  record Asked(String sentence) implements BagOutcome {}

  /** It cannot be so, and nothing was logged. */
  record Refused(String sentence) implements BagOutcome {}
}
