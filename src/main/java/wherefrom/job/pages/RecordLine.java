package wherefrom.job.pages;

import java.util.Optional;
import wherefrom.inspection.Look;

/**
 * One line of the record: a part with what was decided about it, or one result.
 *
 * @param name such as {@code pushrod} or {@code Pushrod runout}
 * @param told the decision or the figure
 * @param look what the mark beside it says; not looked where there is nothing to judge by
 * @param head whether it is of a part, and not of a result
 * @param old whether the part is no more in this engine
 * @param bar empty where no limit was typed
 */
public record RecordLine(
    String name, String told, Look look, boolean head, boolean old, Optional<LimitBar> bar) {

  /** Of a part. */
  public static RecordLine ofPart(String name, String told, Look look, boolean old) {
    return new RecordLine(name, told, look, true, old, Optional.empty());
  }
}
