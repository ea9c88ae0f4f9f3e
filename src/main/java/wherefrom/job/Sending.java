package wherefrom.job;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sends the acts of a bench to the logbook. One that was sent while the store was out of reach is
 * settled before the next: it is written, or the next is sent under its number, so that of the two
 * only one can be written. Who sent it is told what became of it, and nobody else in their place.
 */
final class Sending {
  private static final String KEPT =
      "The step before was kept after all. Look at it, then do this again.";

  /** An act of which nobody knows yet, and what was said to who sent it. */
  private record Unheard(long act, UnsentException said) {}

  private final Logbook logbook;
  private Optional<Unheard> unsettled = Optional.empty();

  /** Acts that were found written for another's sake: who sent them has not asked yet. */
  private final Map<UnsentException, LoggedEntry> found = new HashMap<>();

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
    return unsettled.flatMap(this::ask);
  }

  /**
   * What became of the act of which this was said.
   *
   * @return its entry where it was written; told once
   * @throws UnsentException when the store is still out of reach
   */
  Optional<LoggedEntry> settle(UnsentException said) {
    return Optional.ofNullable(found.remove(said))
        .or(() -> unsettled.filter(one -> one.said() == said).flatMap(this::ask));
  }

  private Optional<LoggedEntry> ask(Unheard sent) {
    Optional<LoggedEntry> written = logbook.find(sent.act());
    if (written.isPresent()) {
      unsettled = Optional.empty();
    }
    return written;
  }

  /**
   * The number for an act: that of one that was sent and not written, else a new one.
   *
   * @throws LogbookException once, where the act before was written unheard: this may be the same
   * @throws UnsentException when the store is still out of reach
   */
  long newAct() {
    Optional<Unheard> before = unsettled;
    Optional<LoggedEntry> written = settle();
    if (written.isPresent()) {
      found.put(before.orElseThrow().said(), written.get());
      throw new LogbookException(KEPT);
    }
    return before.map(Unheard::act).orElseGet(logbook::newAct);
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
    try {
      Appended answer = logbook.append(act.expected(), act.whole(done));
      // Refused otherwise, an act before that had this number may be written: it stays unsettled.
      unsettled = Optional.empty();
      return answer.match(written -> List.of(), Appended.OthersCameFirst::came);
    } catch (UnsentException e) {
      unsettled = Optional.of(new Unheard(act.id(), e));
      throw e;
    }
  }
}
