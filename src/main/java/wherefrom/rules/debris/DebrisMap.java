package wherefrom.rules.debris;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What the finds mean together.
 *
 * @param suspects each suspect with the find that points to it, in sentences
 * @param openings what to open, the cheapest first; what is open already is left out
 * @param mains whether harmful debris reached the main bearings
 */
public record DebrisMap(List<String> suspects, List<Opening> openings, ReachedMains mains) {
  public DebrisMap {
    suspects = List.copyOf(suspects);
    openings = List.copyOf(openings);
  }

  /**
   * Reads the finds.
   *
   * @param opened what was opened and looked at already
   * @param bearings what the looks at the bearings said: OPEN while there were too few
   */
  public static DebrisMap of(List<DebrisFind> finds, Set<Opening> opened, ReachedMains bearings) {
    Set<String> suspects = new LinkedHashSet<>();
    Set<Opening> next = EnumSet.noneOf(Opening.class);
    for (DebrisFind find : finds) {
      suspects.add(find.words() + ": suspect " + find.look().suspect() + ".");
      next.addAll(find.look().openings());
      if (find.place().isPastFilter() && find.look().isHarmful()) {
        suspects.add(
            find.words()
                + ": this is past the filter, so its bypass was open or it came from here"
                + " (common practice, no source).");
        next.add(Opening.ALL_BEARINGS);
        next.add(Opening.GALLERIES);
      }
    }
    ReachedMains mains = mains(finds, bearings);
    if (mains == ReachedMains.OPEN) {
      next.add(Opening.FIRST_BEARINGS);
    }
    next.removeAll(opened);
    return new DebrisMap(new ArrayList<>(suspects), new ArrayList<>(next), mains);
  }

  private static ReachedMains mains(List<DebrisFind> finds, ReachedMains bearings) {
    boolean harmful = finds.stream().anyMatch(find -> find.look().isHarmful());
    boolean there =
        finds.stream()
            .anyMatch(find -> find.place() == DebrisPlace.MAINS && find.look().isHarmful());
    if (there || bearings == ReachedMains.YES) {
      return ReachedMains.YES;
    }
    return harmful ? bearings : ReachedMains.NOTHING_FOUND;
  }
}
