package wherefrom.job;

import java.util.List;
import java.util.Optional;

/**
 * Sends the acts of a bench to the logbook. One that was sent while the store was out of reach is
 * settled before the next: it is written, or the next is sent under its number, so that of the two
 * only one can be written.
 */
final class Sending {
  private final Logbook logbook;
  private Optional<Long> unsettled = Optional.empty();

  Sending(Logbook logbook) {
    this.logbook = logbook;
  }

  boolean isUnsettled() {
    return unsettled.isPresent();
  }

  /**
   * What became of the act that is not settled.
   *
   * @return its entry where it was written
   * @throws UnsentException when the store is still out of reach
   */
  Optional<LoggedEntry> settle() {
    Optional<LoggedEntry> written = unsettled.flatMap(logbook::find);
    if (written.isPresent()) {
      unsettled = Optional.empty();
    }
    return written;
  }

  /** The number for an act: that of one that was sent and not written, else a new one. */
  long newAct() {
    settle();
    return unsettled.orElseGet(logbook::newAct);
  }

  /**
   * Writes an act.
   *
   * @param done what it recorded; nothing is written where it is empty
   * @return what others wrote first; empty where it is written
   */
  List<LoggedEntry> send(ActInMaking act, List<LoggedEntry> done) {
    if (done.isEmpty()) {
      return List.of();
    }
    unsettled = Optional.empty();
    try {
      return logbook
          .append(act.expected(), act.whole(done))
          .match(written -> List.of(), Appended.OthersCameFirst::came);
    } catch (UnsentException e) {
      unsettled = Optional.of(act.id());
      throw e;
    }
  }
}
