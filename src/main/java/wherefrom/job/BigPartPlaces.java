package wherefrom.job;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import wherefrom.job.entry.BigPartMoved;
import wherefrom.job.entry.BigPartsNamed;
import wherefrom.parts.BigPart;
import wherefrom.parts.BigPartAt;
import wherefrom.parts.BigPartName;
import wherefrom.parts.Whereabouts;

/** Where the big parts are: what rules and drawings ask of them. */
final class BigPartPlaces {
  private static final EntryFold<BigPartPlaces> READS =
      EntryFold.<BigPartPlaces>none()
          .on(BigPartsNamed.class, BigPartPlaces::name)
          .on(BigPartMoved.class, BigPartPlaces::move);

  private final Map<Integer, BigPartAt> all = new TreeMap<>();

  BigPartPlaces() {}

  /** As another is now; what changes in one of them later does not in the other. */
  BigPartPlaces(BigPartPlaces other) {
    all.putAll(other.all);
  }

  void apply(LoggedEntry logged) {
    READS.take(this, logged);
  }

  private void name(BigPartsNamed named) {
    int number = named.first();
    for (BigPartName name : named.names()) {
      all.put(number, new BigPartAt(new BigPart(number, name), Whereabouts.IN_ENGINE));
      number++;
    }
  }

  private void move(BigPartMoved moved) {
    all.computeIfPresent(
        moved.number(), (number, before) -> new BigPartAt(before.part(), moved.to()));
  }

  /** The first of these names; empty where the job keeps none. */
  Optional<BigPartAt> find(Predicate<BigPartName> which) {
    return all.values().stream().filter(one -> which.test(one.part().name())).findFirst();
  }
}
