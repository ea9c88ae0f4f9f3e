package wherefrom.rules.debris;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What the finds mean together.
 *
 * @param suspects each suspect with the find that points to it
 * @param openings what to open, the cheapest first; what is open already is left out
 * @param question whether harmful debris reached the main bearings
 */
public record DebrisMap(List<Clue> suspects, List<Opening> openings, MainsQuestion question) {
  public DebrisMap {
    suspects = List.copyOf(suspects);
    openings = List.copyOf(openings);
  }

  /**
   * Reads the finds.
   *
   * @param implied findings elsewhere that set debris loose, such as a failed lobe
   * @param opened what was opened and looked at already
   * @param bearings what the looks at the bearings said
   */
  public static DebrisMap of(
      List<DebrisFind> finds, List<String> implied, Set<Opening> opened, BearingLooks bearings) {
    Set<Clue> suspects = new LinkedHashSet<>();
    Set<Opening> next = EnumSet.noneOf(Opening.class);
    for (DebrisFind find : finds) {
      suspects.add(suspect(find));
      next.addAll(find.look().openings());
      if (find.place().isPastFilter() && find.look().isHarmful()) {
        suspects.add(
            new Clue(
                find.words(),
                "this is past the filter. Its bypass was open, or it began here (common"
                    + " practice, no source)."));
        next.add(Opening.ALL_BEARINGS);
        next.add(Opening.GALLERIES);
      }
    }
    MainsQuestion question = MainsQuestion.of(finds, implied, bearings);
    if (question.answer() == ReachedMains.OPEN) {
      next.add(Opening.FIRST_BEARINGS);
    }
    next.removeAll(opened);
    return new DebrisMap(new ArrayList<>(suspects), new ArrayList<>(next), question);
  }

  /** {@code brown milk, dipstick: suspect coolant in the oil.} */
  public static Clue suspect(DebrisFind find) {
    return new Clue(find.words(), "suspect " + find.look().suspect() + ".");
  }

  /** Whether harmful debris reached the main bearings. */
  public ReachedMains mains() {
    return question.answer();
  }
}
