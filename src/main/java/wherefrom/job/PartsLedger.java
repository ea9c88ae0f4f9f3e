package wherefrom.job;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import wherefrom.engine.Layout;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.parts.FirstNumbering;
import wherefrom.parts.Interchange;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.parts.Whereabouts;

/** The parts of a job, where each is and where it is at home; {@link PartEntries} change it. */
final class PartsLedger {
  /** By item number; a map with the numbers in order is slower to ask, and it is asked a lot. */
  private final Map<Integer, PartRecord> parts = new LinkedHashMap<>();

  private int highest;
  private final Map<Place, Integer> owners = new LinkedHashMap<>();
  private final Map<Integer, Integer> replacements = new LinkedHashMap<>();
  private Optional<Layout> layout = Optional.empty();

  PartsLedger() {}

  /** As another is now; what changes in one of them later does not in the other. */
  PartsLedger(PartsLedger other) {
    parts.putAll(other.parts);
    highest = other.highest;
    owners.putAll(other.owners);
    replacements.putAll(other.replacements);
    layout = other.layout;
  }

  Collection<PartRecord> all() {
    return Collections.unmodifiableCollection(parts.values());
  }

  Collection<Place> places() {
    return Collections.unmodifiableCollection(owners.keySet());
  }

  Optional<PartRecord> find(int item) {
    return Optional.ofNullable(parts.get(item));
  }

  PartRecord get(int item) {
    PartRecord part = parts.get(item);
    if (part == null) {
      throw new IllegalStateException("part " + item + " is not one of this job's");
    }
    return part;
  }

  Optional<Part> findOwner(Place place) {
    return Optional.ofNullable(owners.get(place)).flatMap(this::find).map(PartRecord::part);
  }

  /** The part in use that came in place of this one, over all that were replaced in between. */
  Optional<Part> findReplacement(int item) {
    Optional<Integer> next = Optional.ofNullable(replacements.get(item));
    while (next.filter(replacements::containsKey).isPresent()) {
      next = next.map(replacements::get);
    }
    return next.flatMap(this::find).map(PartRecord::part);
  }

  /** Whether a part may still be used: it was not replaced. */
  boolean isInUse(int item) {
    return !replacements.containsKey(item);
  }

  /** Whether a new part is still to be fitted at a place. */
  boolean awaitsNew(Place place) {
    return Optional.ofNullable(owners.get(place))
        .flatMap(this::find)
        .filter(PartRecord::isUnrun)
        .isPresent();
  }

  /** A part as it is at a place: a new one from the box is of the place that it goes into. */
  PartRecord boundTo(Place place, int item) {
    PartRecord part = get(item);
    Place home = part.part().home();
    boolean fromTheBox =
        part.isUnrun()
            && layout.filter(engine -> Interchange.areAlike(engine, home, place)).isPresent();
    return fromTheBox ? part.with(part.part().withHome(place)) : part;
  }

  void open(JobOpened opened) {
    layout = Optional.of(opened.layout());
    number(1, opened.numberedItems());
  }

  /**
   * Goes on from the parts as a life before left them: what sat somewhere is at home there, and has
   * never come out; nothing that was looked at or decided counts any more.
   *
   * @throws IllegalStateException where a place would have no part, or a part no place
   */
  void goOn(PartsLedger before, Layout engine, Map<Integer, Place> seated) {
    layout = Optional.of(engine);
    before.parts.forEach(
        (item, part) -> add(part.inNextLife(Optional.ofNullable(seated.get(item)))));
    replacements.putAll(before.replacements);
    Map<Place, Integer> sitting = new LinkedHashMap<>();
    seated.forEach((item, place) -> sitting.put(place, item));
    before.owners.forEach((place, owner) -> owners.put(place, sitting.getOrDefault(place, owner)));
    long inUse = parts.keySet().stream().filter(this::isInUse).count();
    Set<Integer> homed = owners.values().stream().filter(this::isInUse).collect(Collectors.toSet());
    if (homed.size() != inUse || homed.size() != owners.size()) {
      throw new IllegalStateException("a part sits in another's place, which is out");
    }
  }

  void track(Layout layout, KindsTracked tracked) {
    if (tracked.items().isEmpty()) {
      List<Place> places = FirstNumbering.items(layout, tracked.kinds());
      int next = parts.keySet().stream().mapToInt(Integer::intValue).max().orElse(0) + 1;
      number(next, places.stream().filter(place -> !owners.containsKey(place)).toList());
    } else {
      number(tracked.first(), tracked.items());
    }
    inOrderOfTakingApart(layout);
  }

  private void number(int first, List<Place> places) {
    int item = first;
    for (Place place : places) {
      Part part = new Part(item, place, 1, 1, false);
      if (parts.containsKey(item) || owners.put(place, item) != null) {
        throw new IllegalStateException("part " + item + ", " + place.key() + ", is there twice");
      }
      add(PartRecord.of(part, Whereabouts.IN_ENGINE, PartDates.NEVER));
      item++;
    }
  }

  /** Numbers grow; of a logbook where they do not the parts are put in order. */
  private void add(PartRecord part) {
    int item = part.part().item();
    parts.put(item, part);
    if (item < highest) {
      Map<Integer, PartRecord> ordered = new TreeMap<>(parts);
      parts.clear();
      parts.putAll(ordered);
    }
    highest = Math.max(highest, item);
  }

  /** Numbers say nothing of when a part comes out. */
  private void inOrderOfTakingApart(Layout layout) {
    Set<PartKind> kinds = owners.keySet().stream().map(Place::kind).collect(Collectors.toSet());
    Map<Place, Integer> numbered = new LinkedHashMap<>(owners);
    owners.clear();
    for (Place place : Places.of(layout, kinds)) {
      Integer item = numbered.remove(place);
      if (item != null) {
        owners.put(place, item);
      }
    }
    owners.putAll(numbered);
  }

  void apply(LoggedEntry logged) {
    PartEntries.READS.take(this, logged);
  }

  /**
   * A new part from a box is bound to no place until it is fitted: where it goes into another place
   * that waits for one like it, the two change homes.
   */
  void bind(int item, Place place) {
    PartRecord part = get(item);
    Place home = part.part().home();
    boolean alike = layout.filter(engine -> Interchange.areAlike(engine, home, place)).isPresent();
    boolean bound = !part.isUnrun() || !isInUse(item);
    if (!place.equals(home) && !bound && alike && awaitsNew(place)) {
      int other = owners.getOrDefault(place, item);
      change(other, one -> one.with(one.part().withHome(home)));
      change(item, one -> one.with(one.part().withHome(place)));
      owners.put(home, other);
      owners.put(place, item);
    }
  }

  /** A new part takes the place of one in use, which is its home from then on. */
  void takeOn(PartRecord fresh, int old) {
    Part part = fresh.part();
    add(fresh);
    owners.put(part.home(), part.item());
    replacements.put(old, part.item());
  }

  void changeAll(List<Integer> items, UnaryOperator<PartRecord> change) {
    items.forEach(item -> change(item, change));
  }

  void change(int item, UnaryOperator<PartRecord> change) {
    parts.put(item, change.apply(get(item)));
  }
}
