package wherefrom.job.print;

import java.util.List;

/** What came of a {@link PrintOrder}. */
public sealed interface PrintOutcome {

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
