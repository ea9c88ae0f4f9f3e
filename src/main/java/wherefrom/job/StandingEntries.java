package wherefrom.job;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Which entries of a history stand: all but those taken back and those that take back. */
final class StandingEntries {
  private StandingEntries() {}

  /** Tells those that stand, oldest first; those of an act each for itself. */
  static void tell(List<LoggedEntry> history, Consumer<LoggedEntry> taker) {
    Set<Long> takenBack = takenBack(history);
    for (LoggedEntry logged : history) {
      if (!takenBack.contains(logged.sequence())) {
        logged.forEach(each -> tellUnlessTakingBack(each, taker));
      }
    }
  }

  private static void tellUnlessTakingBack(LoggedEntry logged, Consumer<LoggedEntry> taker) {
    if (logged.entry().findTakenBack().isEmpty()) {
      taker.accept(logged);
    }
  }

  /** Read from the end: what was taken back takes nothing back. */
  private static Set<Long> takenBack(List<LoggedEntry> history) {
    Set<Long> takenBack = new HashSet<>();
    for (int at = history.size() - 1; at >= 0; at--) {
      LoggedEntry logged = history.get(at);
      if (!takenBack.contains(logged.sequence())) {
        logged.entry().each().forEach(each -> each.findTakenBack().ifPresent(takenBack::add));
      }
    }
    return takenBack;
  }
}
