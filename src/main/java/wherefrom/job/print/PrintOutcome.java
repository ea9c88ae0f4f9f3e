package wherefrom.job.print;

import java.util.List;
import java.util.function.Function;

/** What came of a {@link PrintOrder}. */
public sealed interface PrintOutcome {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Printed, R> printed,
      Function<Cancelled, R> cancelled,
      Function<Refused, R> refused) {
    if (this instanceof Printed one) {
      return printed.apply(one);
    }
    if (this instanceof Cancelled one) {
      return cancelled.apply(one);
    }
    return refused.apply((Refused) this);
  }

  /** It is in the file, or with the printer. */
  record Printed(int labels, int pages) implements PrintOutcome {}

  /** The person closed the printer dialog. */
  record Cancelled() implements PrintOutcome {}

  /**
   * It could not be printed; nothing was written.
   *
   * @param sentences what is wrong and what to do, at least one
   */
  record Refused(List<String> sentences) implements PrintOutcome {
    public Refused {
      sentences = List.copyOf(sentences);
    }
  }
}
