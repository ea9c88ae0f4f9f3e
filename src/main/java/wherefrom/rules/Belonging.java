package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.Interchange;
import wherefrom.parts.Mates;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/**
 * Where a part belongs now.
 *
 * @param place its home; or beside the part it moves with, where that one sits elsewhere on purpose
 * @param since the entry that made it so; 0 for the home
 * @param with the part that it goes with, where that one sits elsewhere
 */
public record Belonging(Place place, long since, Optional<Part> with) {

  /** Where a part belongs, whatever place is asked about. */
  public static Belonging of(JobFacts bench, Part part) {
    Optional<Part> leader = bench.findLeader(part.item());
    Optional<Place> seat = leader.flatMap(one -> bench.findSeat(one.item()));
    if (leader.isEmpty() || seat.isEmpty()) {
      return new Belonging(part.home(), 0, Optional.empty());
    }
    Place beside = Mates.beside(part.home(), seat.get());
    long since = movedAway(bench, leader.get());
    return beside.equals(part.home())
        ? new Belonging(part.home(), since, Optional.empty())
        : new Belonging(beside, since, leader);
  }

  /** The entry that took a part away from its home; 0 where it sits there, which is no news. */
  static long movedAway(JobFacts bench, Part part) {
    boolean atHome = bench.findSeat(part.item()).equals(Optional.of(part.home()));
    return atHome ? 0 : bench.movedAt(part.item());
  }

  /** Whether the part belongs at this very place. A new one from a box waits for any like it. */
  static boolean isAt(JobFacts bench, Part part, Place place) {
    return of(bench, part).place().equals(place)
        || (bench.findLeader(part.item()).isEmpty()
            && bench.isUnrun(part.item())
            && bench.awaitsNew(place)
            && Interchange.areAlike(bench.layout(), part.home(), place));
  }
}
