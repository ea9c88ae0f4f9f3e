package wherefrom.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Site;
import wherefrom.inspection.Look;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartReplaced;
import wherefrom.parts.Mates;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.CheckKey;
import wherefrom.rules.consequence.KnownCheck;

/**
 * Which individual each part was machined or worn in with, and goes where it goes: the fold over
 * the entries that make and part such pairs. What came out together is a pair; a new part finds its
 * mate when it is fitted; a new rod and a new cap that were both bought came together; a housing
 * that was machined again makes a pair of the rod and the cap that it was machined with.
 */
final class Pairs {
  private static final EntryFold<Pairs> READS =
      EntryFold.<Pairs>none()
          .on(JobOpened.class, (pairs, opened) -> pairs.pairAll())
          .on(KindsTracked.class, (pairs, tracked) -> pairs.pairAll())
          .on(PartReplaced.class, Pairs::bought)
          .on(PartFitted.class, Pairs::fitted)
          .on(CheckAnswered.class, Pairs::answered);

  private final PartsLedger parts;
  private final Seats seats;
  private final Map<Integer, Integer> leaders = new HashMap<>();

  /** For each place the places of the parts that move with what sits there. */
  private final Map<Place, List<Place>> followers = new HashMap<>();

  /** The caps that are of their rod's housing: bought with it, or machined with it. */
  private final Set<Integer> matched = new HashSet<>();

  private final Set<Integer> boughtWithRod = new HashSet<>();

  Pairs(PartsLedger parts, Seats seats) {
    this.parts = parts;
    this.seats = seats;
  }

  /**
   * As another is now; what changes in one of them later does not in the other.
   *
   * @param parts the same job's, which go their own way with it, as its seats do
   */
  Pairs(Pairs other, PartsLedger parts, Seats seats) {
    this(parts, seats);
    leaders.putAll(other.leaders);
    other.followers.forEach((leader, places) -> followers.put(leader, new ArrayList<>(places)));
    matched.addAll(other.matched);
    boughtWithRod.addAll(other.boughtWithRod);
  }

  /** The part that this one goes with. */
  Optional<Part> findLeader(int item) {
    return Optional.ofNullable(leaders.get(item)).flatMap(parts::find).map(PartRecord::part);
  }

  /**
   * Whether a cap was bought together with its rod. A housing that was machined again with another
   * cap has still to be measured; that of a new rod is measured for the rod.
   */
  boolean cameWithItsRod(int cap) {
    return boughtWithRod.contains(cap);
  }

  /** The mate of what sits in the place that this one goes with; else the place's owner. */
  Optional<Part> findRightful(Place place) {
    return Mates.findLeader(place)
        .flatMap(seats::findSeated)
        .flatMap(leader -> findMate(place, leader))
        .or(() -> parts.findOwner(place));
  }

  /** The part at home in such a place that goes with this leader. */
  private Optional<Part> findMate(Place place, Part leader) {
    return parts.all().stream()
        .filter(record -> leaders.getOrDefault(record.part().item(), 0) == leader.item())
        .map(PartRecord::part)
        .filter(part -> parts.isInUse(part.item()))
        .filter(part -> Mates.beside(part.home(), place).equals(place))
        .findFirst();
  }

  /** Takes in an entry that parts and assembly have taken in already. */
  void apply(LoggedEntry logged) {
    READS.take(this, logged);
  }

  private void pairAll() {
    parts.all().forEach(record -> pairAtHome(record.part()));
    followers.clear();
    parts.places().forEach(this::listFollower);
  }

  private void answered(CheckAnswered answered) {
    if (answered.look() == Look.PASS) {
      CheckKey.find(answered.check())
          .filter(check -> check.is(KnownCheck.CAP_HOUSING))
          .map(check -> Site.of(check.where()))
          .filter(Site.BigEnd.class::isInstance)
          .ifPresent(this::machinedAgain);
    }
  }

  private void listFollower(Place place) {
    Mates.findLeader(place)
        .ifPresent(leader -> followers.computeIfAbsent(leader, it -> new ArrayList<>()).add(place));
  }

  /** Work that was done, recorded by itself or counted back from the machine shop. */
  void made(Change change) {
    if (change.kind() == ChangeKind.ROD_RESIZED) {
      machinedAgain(Site.of(change.where()));
    }
  }

  private void machinedAgain(Site site) {
    parts.places().stream()
        .filter(place -> place.kind() == PartKind.ROD_CAP && isAt(site, place))
        .forEach(this::machinedTogether);
  }

  private void pairAtHome(Part part) {
    if (!part.fresh() && !leaders.containsKey(part.item())) {
      Mates.findLeader(part.home())
          .flatMap(parts::findOwner)
          .ifPresent(leader -> leaders.put(part.item(), leader.item()));
    }
  }

  /** A cap comes with its rod: two new ones for one place, neither of them fitted yet. */
  private void bought(PartReplaced replaced) {
    Part fresh = parts.get(replaced.newItem()).part();
    if (fresh.home().spot() instanceof RodSpot rod) {
      Optional<PartRecord> cap = unrun(PartKind.ROD_CAP, rod.cylinder(), ShellHalf.LOWER);
      Optional<PartRecord> newRod = unrun(PartKind.ROD, rod.cylinder(), ShellHalf.UPPER);
      if (cap.isPresent() && newRod.isPresent()) {
        comeTogether(cap.get().part().item(), newRod.get().part().item());
      }
    }
  }

  /** A rod comes with one cap; a second one is of another housing. */
  private void comeTogether(int cap, int rod) {
    boolean hasCap = matched.stream().anyMatch(other -> leaders.getOrDefault(other, 0) == rod);
    if (!hasCap && !matched.contains(cap)) {
      match(cap, rod);
      boughtWithRod.add(cap);
    }
  }

  private Optional<PartRecord> unrun(PartKind kind, int cylinder, ShellHalf half) {
    return parts
        .findOwner(new Place(kind, new RodSpot(cylinder, half)))
        .map(part -> parts.get(part.item()))
        .filter(PartRecord::isUnrun);
  }

  /** A new part runs in with what it is fitted beside. */
  private void fitted(PartFitted fitted) {
    Mates.findLeader(fitted.place())
        .flatMap(seats::findSeated)
        .ifPresent(leader -> leaders.putIfAbsent(fitted.item(), leader.item()));
    followers.getOrDefault(fitted.place(), List.of()).stream()
        .flatMap(place -> seats.findSeated(place).stream())
        .forEach(mate -> leaders.putIfAbsent(mate.item(), fitted.item()));
  }

  private void machinedTogether(Place cap) {
    Optional<Part> rod = Mates.findLeader(cap).flatMap(parts::findOwner);
    parts.findOwner(cap).ifPresent(part -> rod.ifPresent(own -> match(part.item(), own.item())));
  }

  private void match(int cap, int rod) {
    leaders.put(cap, rod);
    matched.add(cap);
  }

  private static boolean isAt(Site site, Place place) {
    return site instanceof Site.Whole || site.findCylinder().equals(place.spot().findCylinder());
  }
}
