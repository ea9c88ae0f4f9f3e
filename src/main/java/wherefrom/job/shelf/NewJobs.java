package wherefrom.job.shelf;

import java.util.List;
import java.util.stream.Collectors;
import wherefrom.engine.Layout;
import wherefrom.engine.LayoutCheck;
import wherefrom.engine.LayoutFault;
import wherefrom.job.entry.JobOpened;

/** What a job must have to be begun, wherever it is to lie. */
public final class NewJobs {
  private NewJobs() {}

  /**
   * Refuses a job without a name, without kinds, or with a layout that no engine has.
   *
   * @throws IllegalArgumentException with a sentence that says what is wrong
   */
  public static void require(Shelf.NewJob begun) {
    if (begun.name().isBlank()) {
      throw new IllegalArgumentException("Give the job a name that you will recognize.");
    }
    if (begun.name().strip().codePointCount(0, begun.name().strip().length())
        > JobOpened.MOST_LETTERS) {
      throw new IllegalArgumentException(
          "The job's name is longer than " + JobOpened.MOST_LETTERS + " letters: shorten it.");
    }
    requireSound(begun.layout());
    if (begun.kinds().isEmpty()) {
      throw new IllegalArgumentException("Choose at least one kind of part to track.");
    }
  }

  /**
   * Refuses a layout that no engine has.
   *
   * @throws IllegalArgumentException with a sentence for each fault
   */
  public static void requireSound(Layout layout) {
    List<LayoutFault> faults = LayoutCheck.faults(layout);
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(
          faults.stream().map(LayoutFault::sentence).collect(Collectors.joining(" ")));
    }
  }
}
