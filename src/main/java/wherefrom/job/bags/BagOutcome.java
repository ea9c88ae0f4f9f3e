package wherefrom.job.bags;

import java.util.function.Function;

/** What came of something that was done with a bag or a big part. */
public sealed interface BagOutcome {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Logged, R> logged, Function<Asked, R> asked, Function<Refused, R> refused) {
    if (this instanceof Logged one) {
      return logged.apply(one);
    }
    if (this instanceof Asked one) {
      return asked.apply(one);
    }
    return refused.apply((Refused) this);
  }

  /** For the person, with a full stop. */
  String sentence();

  /** It is logged. */
  record Logged(String sentence) implements BagOutcome {}

  /** Nothing was logged: something speaks against it, and it can be done all the same. */
  record Asked(String sentence) implements BagOutcome {}

  /** It cannot be so, and nothing was logged. */
  record Refused(String sentence) implements BagOutcome {}
}
