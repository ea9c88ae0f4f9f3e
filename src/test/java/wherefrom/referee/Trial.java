package wherefrom.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A history that was played, and where program and referee came apart. */
record Trial(List<Act> acts, String difference) {
  Trial {
    acts = List.copyOf(acts);
  }

  /** Plays a history of a length drawn from a seed; empty where both say the same all along. */
  static Optional<Trial> play(Bout start, Motor motor, long seed) {
    Chance chance = new Chance(motor, seed);
    Bout bout = start.copy();
    List<Act> acts = new ArrayList<>();
    int length = 3 + (int) Math.floorMod(seed * 31, 8L);
    while (acts.size() < length) {
      Act act = chance.next(bout.story());
      acts.add(act);
      Optional<String> found =
          bout.perform(act)
              .or(() -> bout.compareThese(chance.slots()))
              .or(() -> acts.size() == length ? end(bout, seed) : Optional.empty());
      if (found.isPresent()) {
        return found.map(it -> new Trial(acts, it));
      }
    }
    return Optional.empty();
  }

  /** Every other history ends with a look at all of the engine; the rest with the lists alone. */
  private static Optional<String> end(Bout bout, long seed) {
    return seed % 2 == 0 ? bout.compareEach() : bout.compareLists();
  }

  /** Plays acts again; the difference that then comes up first. */
  static Optional<String> replay(Bout start, List<Act> acts) {
    Bout bout = start.copy();
    Optional<String> found = Optional.empty();
    for (Act act : acts) {
      found = found.or(() -> bout.perform(act));
    }
    return found.or(() -> bout.compareAll(8));
  }

  /** The same with every act left out that the difference does not need. */
  Trial shrunk(Bout start) {
    for (int at = acts.size() - 1; at >= 0; at--) {
      List<Act> fewer = new ArrayList<>(acts);
      fewer.remove(at);
      Optional<String> found = replay(start, fewer);
      if (found.isPresent()) {
        return new Trial(fewer, found.get()).shrunk(start);
      }
    }
    return this;
  }

  String words(Motor motor) {
    return String.join("; ", acts.stream().map(act -> act.words(motor)).toList())
        + "\n    "
        + difference;
  }

  /** What kind of difference it is, whichever cylinder it is at. */
  String shape() {
    return difference.replaceAll("[\\d]+", "#").replaceAll("(IN|EX)\\b", "V");
  }
}
