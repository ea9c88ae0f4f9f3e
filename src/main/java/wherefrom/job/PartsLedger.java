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
import wherefrom.inspection.Decision;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.PiecesCounted;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.entry.SetDecided;
import wherefrom.job.entry.TagReissued;
import wherefrom.parts.FirstNumbering;
import wherefrom.parts.Interchange;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.parts.Whereabouts;

/** The parts of a job and where each is: the fold over the entries that speak of parts. */
final class PartsLedger {
  private static final EntryFold<PartsLedger> READS =
      EntryFold.<PartsLedger>none()
          .at(PartOut.class, (parts, entry, at) -> parts.out(entry.item(), at))
          .at(PartLost.class, PartsLedger::lose)
          .at(PartFound.class, (parts, entry, at) -> parts.out(entry.item(), at))
          .at(OffForWashing.class, PartsLedger::wash)
          .at(BackFromWashing.class, (parts, entry, at) -> parts.out(entry.item(), at))
          .at(SentToShop.class, PartsLedger::send)
          .at(BackFromShop.class, PartsLedger::back)
          .at(PartFitted.class, PartsLedger::fit)
          .at(PartUnfitted.class, (parts, entry, at) -> parts.out(entry.item(), at))
          .at(PartReplaced.class, PartsLedger::replace)
          .on(TagReissued.class, PartsLedger::reissue)
          .on(PiecesCounted.class, PartsLedger::count)
          .at(LookRecorded.class, PartsLedger::look)
          .at(DecisionMade.class, PartsLedger::decide)
          .at(SetDecided.class, PartsLedger::decide)
          .at(NoteAdded.class, PartsLedger::note)
          .at(PhotoAdded.class, PartsLedger::photograph);

  /** By item number; a map with the numbers in order is slower to ask, and it is asked a lot. */
  private final Map<Integer, PartRecord> parts = new LinkedHashMap<>();

  private int highest;
  private final Map<Place, Integer> owners = new LinkedHashMap<>();
  private final Map<Integer, Integer> replacements = new LinkedHashMap<>();
  private Optional<Layout> layout = Optional.empty();

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
    READS.take(this, logged);
  }

  private void lose(PartLost lost, LoggedEntry logged) {
    move(lost.item(), Whereabouts.LOST, lost.note(), logged.sequence());
  }

  private void wash(OffForWashing off, LoggedEntry logged) {
    away(List.of(off.item()), Whereabouts.WASHING, "basket " + off.basket(), logged.sequence());
  }

  private void send(SentToShop sent, LoggedEntry logged) {
    away(sent.items(), Whereabouts.AT_SHOP, "visit " + sent.visit(), logged.sequence());
  }

  private void back(BackFromShop back, LoggedEntry logged) {
    back.items().forEach(item -> out(item, logged));
    changeAll(back.items(), PartsLedger::spent);
  }

  private void out(int item, LoggedEntry logged) {
    move(item, Whereabouts.OUT, "", logged.sequence());
  }

  /** A part that was replaced stays retired: fitted on purpose and taken out, it is so again. */
  private void move(int item, Whereabouts to, String note, long sequence) {
    Whereabouts now = to == Whereabouts.OUT && !isInUse(item) ? Whereabouts.RETIRED : to;
    change(item, part -> part.at(now, note, part.dates().moved(sequence)));
  }

  private void away(List<Integer> items, Whereabouts where, String to, long sequence) {
    changeAll(items, part -> part.away(where, to, part.dates().moved(sequence)));
  }

  /**
   * A new part from a box is bound to no place until it is fitted: where it goes into another place
   * that waits for one like it, the two change homes.
   */
  private void fit(PartFitted fitted, LoggedEntry logged) {
    PartRecord part = get(fitted.item());
    Place home = part.part().home();
    Place place = fitted.place();
    boolean alike = layout.filter(engine -> Interchange.areAlike(engine, home, place)).isPresent();
    boolean bound = !part.isUnrun() || !isInUse(fitted.item());
    if (!place.equals(home) && !bound && alike && awaitsNew(place)) {
      int other = owners.getOrDefault(place, fitted.item());
      change(other, one -> one.with(one.part().withHome(home)));
      change(fitted.item(), one -> one.with(one.part().withHome(place)));
      owners.put(home, other);
      owners.put(place, fitted.item());
    }
    change(fitted.item(), one -> one.at(Whereabouts.FITTED, one.dates().fitted(logged.sequence())));
  }

  /** The step that made the part may have been taken back; its tag then stands for nothing. */
  private void reissue(TagReissued reissued) {
    if (parts.containsKey(reissued.item())) {
      change(reissued.item(), part -> part.with(part.part().withIssue(reissued.issue())));
    }
  }

  private void count(PiecesCounted counted) {
    change(counted.item(), part -> part.with(part.part().withPieces(counted.pieces())));
  }

  private void look(LookRecorded look, LoggedEntry logged) {
    change(look.item(), part -> part.looked(look.check(), look.look(), logged.sequence()));
  }

  private void decide(DecisionEntry made, LoggedEntry logged) {
    changeAll(made.items(), part -> part.decided(Optional.of(made.decision()), logged.sequence()));
  }

  private void note(NoteAdded note, LoggedEntry logged) {
    remark(note.item(), new Remark(logged.time(), note.text(), Optional.empty()));
  }

  private void photograph(PhotoAdded photo, LoggedEntry logged) {
    remark(photo.item(), new Remark(logged.time(), photo.caption(), Optional.of(photo.file())));
  }

  /** What is about the whole job, with item 0, is about no part. */
  private void remark(int item, Remark remark) {
    if (item > 0) {
      change(item, part -> part.remarked(remark));
    }
  }

  /** What was decided for machining is done once the part is back: decide anew. */
  private static PartRecord spent(PartRecord part) {
    return part.decision().equals(Optional.of(Decision.MACHINE))
        ? part.decided(Optional.empty(), 0)
        : part;
  }

  private void replace(PartReplaced replaced, LoggedEntry logged) {
    long sequence = logged.sequence();
    PartRecord old = get(replaced.oldItem());
    Place home = old.part().home();
    Part fresh = new Part(replaced.newItem(), home, 1, old.part().pieces(), true);
    add(PartRecord.of(fresh, Whereabouts.OUT, PartDates.takenOn(sequence)));
    owners.put(home, fresh.item());
    replacements.put(replaced.oldItem(), fresh.item());
    move(replaced.oldItem(), Whereabouts.RETIRED, replaced.reason(), sequence);
  }

  private void changeAll(List<Integer> items, UnaryOperator<PartRecord> change) {
    items.forEach(item -> change(item, change));
  }

  private void change(int item, UnaryOperator<PartRecord> change) {
    parts.put(item, change.apply(get(item)));
  }
}
