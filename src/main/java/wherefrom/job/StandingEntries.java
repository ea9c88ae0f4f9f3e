package wherefrom.job;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import wherefrom.job.entry.TakenBack;

/** Which entries of a history stand: all but those taken back and those that take back. */
final class StandingEntries {
  private StandingEntries() {}

  /** Those that stand, oldest first; those of an act each for itself. */
  static Stream<LoggedEntry> of(List<LoggedEntry> history) {
    Set<Long> takenBack = takenBack(history);
    return history.stream()
        .filter(logged -> !takenBack.contains(logged.sequence()))
        .flatMap(LoggedEntry::each)
        .filter(logged -> !(logged.entry() instanceof TakenBack));
  }

  /** Read from the end: what was taken back takes nothing back. */
  private static Set<Long> takenBack(List<LoggedEntry> history) {
    Set<Long> takenBack = new HashSet<>();
    for (int at = history.size() - 1; at >= 0; at--) {
      LoggedEntry logged = history.get(at);
      if (!takenBack.contains(logged.sequence())) {
        logged
            .each()
            .filter(each -> each.entry() instanceof TakenBack)
            .forEach(each -> takenBack.add(((TakenBack) each.entry()).sequence()));
      }
    }
    return takenBack;
  }
}
