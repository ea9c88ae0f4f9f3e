package wherefrom.referee;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Goes through every history of a length. Two acts that touch nothing in common may be done in
 * either order: only one order is walked.
 */
final class Walk {
  private static final int MOST_FOUND = 30;
  private static final Set<String> ALL = Set.of("all");

  /** How many histories were judged, and where program and referee came apart. */
  record Found(long histories, List<String> differences, long milliseconds) {}

  private final Deeds deeds;
  private final Deque<Act> path = new ArrayDeque<>();
  private final List<String> differences = new ArrayList<>();
  private long histories;

  private Walk(Deeds deeds) {
    this.deeds = deeds;
  }

  /** Every history of up to so many acts after a start. */
  static Found everyHistory(Bout start, Deeds deeds, int length) {
    long began = System.nanoTime();
    List<Walk> walks =
        deeds.next(start.story()).parallelStream()
            .map(
                act -> {
                  Walk walk = new Walk(deeds);
                  walk.step(start.copy(), act, length, deeds.touches(start.story(), act));
                  return walk;
                })
            .toList();
    return new Found(
        walks.stream().mapToLong(walk -> walk.histories).sum(),
        walks.stream().flatMap(walk -> walk.differences.stream()).limit(MOST_FOUND).toList(),
        (System.nanoTime() - began) / 1_000_000);
  }

  private void step(Bout bout, Act act, int length, Set<String> touched) {
    path.addLast(act);
    histories++;
    int before = bout.story().length();
    Optional<String> found = bout.perform(act).or(() -> bout.compareAll(1));
    found.ifPresent(it -> differences.add(words() + "\n    " + it));
    boolean happened = bout.story().length() > before;
    if (found.isEmpty() && happened && length > 1) {
      on(bout, act, length - 1, touched);
    }
    path.removeLast();
  }

  private void on(Bout bout, Act last, int length, Set<String> lastTouched) {
    for (Act act : deeds.next(bout.story())) {
      Set<String> touched = deeds.touches(bout.story(), act);
      boolean otherOrder =
          !touched.equals(ALL)
              && !lastTouched.equals(ALL)
              && Collections.disjoint(touched, lastTouched)
              && act.toString().compareTo(last.toString()) < 0;
      if (!otherOrder && differences.size() < MOST_FOUND) {
        step(bout.copy(), act, length, touched);
      }
    }
  }

  private String words() {
    return String.join("; ", path.stream().map(act -> act.words(deeds.motor())).toList());
  }
}
