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
  private final Deeds deeds;
  private final Deque<Act> path = new ArrayDeque<>();
  private final List<String> differences = new ArrayList<>();
  private long histories;

  Walk(Deeds deeds) {
    this.deeds = deeds;
  }

  long histories() {
    return histories;
  }

  List<String> differences() {
    return differences;
  }

  /** Walks on from here, at most so many acts more, until too much is found. */
  void on(Bout bout, int depth, Set<String> lastTouched, String last, int mostFound) {
    histories++;
    if (depth == 0) {
      return;
    }
    for (Act act : deeds.next(bout.story())) {
      Set<String> touched = deeds.touches(bout.story(), act);
      String words = act.toString();
      boolean otherOrder =
          !touched.contains("all")
              && !lastTouched.contains("all")
              && Collections.disjoint(touched, lastTouched)
              && words.compareTo(last) < 0;
      if (!otherOrder && differences.size() < mostFound) {
        step(bout.copy(), act, depth, touched, words, mostFound);
      }
    }
  }

  private void step(
      Bout bout, Act act, int depth, Set<String> touched, String words, int mostFound) {
    path.addLast(act);
    Optional<String> found = bout.perform(act).or(() -> bout.compareAll(1));
    if (found.isPresent()) {
      histories++;
      differences.add(describe() + "\n    " + found.get());
    } else {
      on(bout, depth - 1, touched, words, mostFound);
    }
    path.removeLast();
  }

  private String describe() {
    StringBuilder words = new StringBuilder();
    path.forEach(act -> words.append(words.length() == 0 ? "" : "; ").append(act.words(deeds.motor())));
    return words.toString();
  }
}
