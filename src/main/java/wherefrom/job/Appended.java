package wherefrom.job;

import java.util.List;
import java.util.function.Function;

/** What came of bringing an entry to the logbook. */
public sealed interface Appended {

  /** What the function for its kind makes of it. */
  default <R> R match(Function<Done, R> done, Function<OthersCameFirst, R> others) {
    return this instanceof Done one ? done.apply(one) : others.apply((OthersCameFirst) this);
  }

  /** It is written, and will be there whatever happens. */
  record Done(LoggedEntry logged) implements Appended {}

  /**
   * Nothing was written, as other benches have written since: what they did is to be taken in, and
   * the act judged anew.
   *
   * @param came what they wrote, oldest first; never empty
   */
  record OthersCameFirst(List<LoggedEntry> came) implements Appended {
    public OthersCameFirst {
      came = List.copyOf(came);
    }
  }
}
