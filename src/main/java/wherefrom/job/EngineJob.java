package wherefrom.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.engine.Layout;
import wherefrom.engine.Section;
import wherefrom.engine.Spot;
import wherefrom.inspection.Decision;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.DecisionsAsked;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.entry.ReadingsTaken;
import wherefrom.job.entry.SetDecided;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TakenBack;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.Ban;
import wherefrom.rules.Bench;
import wherefrom.rules.Evidence;
import wherefrom.rules.Objection;
import wherefrom.rules.Objections;
import wherefrom.rules.OpenCheck;

/**
 * The state of one engine job: the fold over its logbook's entries, less those taken back. It
 * changes only through {@link OpenJob}.
 */
public final class EngineJob implements Bench {
  /** From the first of these on, what a mere replacement or swap asks for binds, too. */
  private static final Set<Class<?>> INSPECTION =
      Set.of(
          LookRecorded.class,
          FeatureLooked.class,
          ReadingsTaken.class,
          DecisionMade.class,
          SetDecided.class);

  /** What a part stands in rightly, or nothing for a reason. */
  private static final Set<PlaceState> FILLED =
      Set.of(PlaceState.IN, PlaceState.FITTED, PlaceState.OTHER_FITTED, PlaceState.EXCUSED);

  private final JobOpened opened;
  private final List<LoggedEntry> standing = new ArrayList<>();
  private final PartsLedger parts = new PartsLedger();
  private final Assembly assembly = new Assembly();
  private final Set<PartKind> kinds;
  private final Seats seats = new Seats(parts, assembly);
  private final Pairs pairs = new Pairs(parts, seats);
  private final ShopChanges shopChanges = new ShopChanges(this);
  private boolean inspecting;
  private Optional<Long> decisionsAskedSince = Optional.empty();
  private final List<Spot> cards;
  private Optional<StandingRules> rules = Optional.empty();
  private Optional<Meanings> meanings = Optional.empty();
  private Optional<MeasureBook> measures = Optional.empty();
  private Optional<Findings> findings = Optional.empty();
  private final Map<Integer, List<Objection>> against = new HashMap<>();

  private EngineJob(JobOpened opened) {
    this.opened = opened;
    this.kinds = new TreeSet<>(opened.kinds());
    this.cards = opened.numberedCards();
  }

  /**
   * The state that these entries give.
   *
   * @throws IllegalStateException when they do not begin with the job's opening, or speak of a part
   *     that the job has not
   */
  public static EngineJob of(List<LoggedEntry> entries) {
    if (entries.isEmpty() || !(entries.get(0).entry() instanceof JobOpened opened)) {
      throw new IllegalStateException("the logbook does not begin with the opening of a job");
    }
    Set<Long> takenBack = takenBack(entries);
    EngineJob job = new EngineJob(opened);
    for (LoggedEntry logged : entries) {
      if (!takenBack.contains(logged.sequence())) {
        logged.forEach(job::applyStanding);
      }
    }
    return job;
  }

  private void applyStanding(LoggedEntry logged) {
    if (!(logged.entry() instanceof TakenBack)) {
      apply(logged);
    }
  }

  /** Read from the end: what was taken back takes nothing back. */
  private static Set<Long> takenBack(List<LoggedEntry> entries) {
    Set<Long> takenBack = new HashSet<>();
    for (int at = entries.size() - 1; at >= 0; at--) {
      LoggedEntry logged = entries.get(at);
      if (!takenBack.contains(logged.sequence())) {
        logged
            .each()
            .filter(each -> each.entry() instanceof TakenBack)
            .forEach(each -> takenBack.add(((TakenBack) each.entry()).sequence()));
      }
    }
    return takenBack;
  }

  /** Takes in the next entry, which must not be one that takes back. */
  void apply(LoggedEntry logged) {
    standing.add(logged);
    rules = Optional.empty();
    measures = Optional.empty();
    findings = Optional.empty();
    against.clear();
    take(logged);
    pairs.apply(logged.entry());
    shopChanges.take(logged).forEach(pairs::made);
  }

  private void take(LoggedEntry logged) {
    JobEntry entry = logged.entry();
    if (entry instanceof JobOpened first) {
      parts.open(first);
    } else if (entry instanceof KindsTracked tracked) {
      kinds.addAll(tracked.kinds());
      meanings = Optional.empty();
      parts.track(layout(), tracked);
    } else if (entry instanceof DecisionsAsked asked) {
      decisionsAskedSince = asked.everyPart() ? Optional.of(logged.sequence()) : Optional.empty();
    } else if (entry instanceof PlaceExcused excuse && findSeated(excuse.place()).isPresent()) {
      int item = findSeated(excuse.place()).get().item();
      assembly.keep(item, excuse.reason(), logged.sequence());
    } else {
      inspecting |= INSPECTION.contains(entry.getClass());
      parts.apply(logged);
      assembly.apply(logged);
    }
  }

  public String name() {
    return opened.name();
  }

  /** The number that tells this engine's tags from every other's. */
  public int engine() {
    return opened.engine();
  }

  public UnitSystem units() {
    return opened.units();
  }

  @Override
  public Layout layout() {
    return opened.layout();
  }

  /** The spots by the number of their place card: the spot of card 1 first. */
  public List<Spot> cards() {
    return cards;
  }

  public Set<PartKind> kinds() {
    return Set.copyOf(kinds);
  }

  /** Every entry that stands, oldest first; what was taken back is not among them. */
  public List<LoggedEntry> standing() {
    return List.copyOf(standing);
  }

  /** When the job was last worked on. */
  public Instant lastTouched() {
    return standing.get(standing.size() - 1).time();
  }

  /** Every place that is tracked, in the order of taking apart. */
  public Collection<Place> places() {
    return parts.places();
  }

  /** Every part, retired ones included, by item number. */
  public Collection<PartRecord> parts() {
    return parts.all();
  }

  public Optional<PartRecord> findPart(int item) {
    return parts.find(item);
  }

  /** The part with this item number, which must be one of the job's. */
  public PartRecord getPart(int item) {
    return parts.get(item);
  }

  /** What is fitted where now. */
  public Map<Place, Part> fitted() {
    Map<Place, Part> fitted = new LinkedHashMap<>();
    assembly.fitted().forEach((place, item) -> fitted.put(place, parts.get(item).part()));
    return fitted;
  }

  /** The parts that were fitted on purpose against a stop, with the entry that says why. */
  public Collection<PartFitted> onPurpose() {
    return assembly.onPurpose().values();
  }

  /** What those of them un-mate that sit away from home. */
  public List<Unmated> unmated() {
    return Unmated.all(this);
  }

  public Optional<String> findExcuse(Place place) {
    return Optional.ofNullable(assembly.excused().get(place));
  }

  /** Why a part sits where it sits although something stood against it. */
  public Optional<String> findKept(int item) {
    return assembly.findKept(item).map(Assembly.Kept::reason);
  }

  /**
   * The sections that are closed: somebody closed them, and everything in them is right to this
   * day.
   */
  public Set<String> closedSections() {
    Set<String> closed = new LinkedHashSet<>(assembly.closed());
    places().stream()
        .filter(place -> !isFilled(place))
        .forEach(place -> closed.remove(Section.of(layout(), place.spot()).key()));
    return closed;
  }

  /** Whether a place needs nothing more: its part is in and right, or it is empty for a reason. */
  public boolean isFilled(Place place) {
    return FILLED.contains(state(place));
  }

  /** What stands against the part that sits in a place; empty where nothing does or none sits. */
  public List<Objection> listAgainst(Place place) {
    return findSeated(place)
        .map(
            part ->
                against.computeIfAbsent(
                    part.item(), item -> Objections.ofSeated(this, part, place)))
        .orElse(List.of());
  }

  /** The stop that waits to be solved. */
  public Optional<StopGiven> standingStop() {
    return assembly.standingStop();
  }

  /** What is so at a place. */
  public PlaceState state(Place place) {
    Optional<Part> here = findSeated(place);
    if (here.isPresent()) {
      return seated(here.get(), place);
    }
    if (findExcuse(place).isPresent()) {
      return PlaceState.EXCUSED;
    }
    Optional<Part> owner = findOwner(place);
    if (owner.isEmpty()) {
      return PlaceState.OPEN;
    }
    return switch (whereabouts(owner.get().item())) {
      case OUT -> PlaceState.OUT;
      case WASHING -> PlaceState.WASHING;
      case AT_SHOP -> PlaceState.AT_SHOP;
      case LOST -> PlaceState.MISSING;
      case IN_ENGINE, FITTED, RETIRED -> PlaceState.OPEN;
    };
  }

  private PlaceState seated(Part part, Place place) {
    boolean fitted = findFittedAt(part.item()).isPresent();
    if (!listAgainst(place).isEmpty()) {
      return fitted ? PlaceState.FITTED_BUT : PlaceState.IN_BUT;
    }
    if (!fitted) {
      return PlaceState.IN;
    }
    return part.home().equals(place) ? PlaceState.FITTED : PlaceState.OTHER_FITTED;
  }

  @Override
  public Whereabouts whereabouts(int item) {
    return parts.get(item).where();
  }

  @Override
  public long movedAt(int item) {
    return parts.get(item).dates().movedAt();
  }

  @Override
  public Optional<String> findAwayTo(int item) {
    return parts.get(item).awayTo();
  }

  @Override
  public Optional<Part> findFitted(Place place) {
    return seats.findFitted(place);
  }

  @Override
  public Optional<Place> findFittedAt(int item) {
    return assembly.findFittedAt(item);
  }

  @Override
  public Optional<Part> findSeated(Place place) {
    return seats.findSeated(place);
  }

  @Override
  public Optional<Place> findSeat(int item) {
    return seats.findSeat(item);
  }

  @Override
  public Optional<Part> findOwner(Place place) {
    return parts.findOwner(place);
  }

  @Override
  public Optional<Part> findRightful(Place place) {
    return pairs.findRightful(place);
  }

  @Override
  public Optional<Part> findLeader(int item) {
    return pairs.findLeader(item);
  }

  @Override
  public boolean isUnrun(int item) {
    return parts.get(item).isUnrun();
  }

  @Override
  public boolean awaitsNew(Place place) {
    return parts.awaitsNew(place);
  }

  @Override
  public Optional<Part> findReplacement(int item) {
    return parts.findReplacement(item);
  }

  @Override
  public Evidence worst(int item) {
    return findings().worst(item);
  }

  @Override
  public Evidence worstSinceDecision(int item) {
    return findings().sinceDecision(item);
  }

  @Override
  public Optional<Decision> findDecision(int item) {
    return parts.get(item).decision();
  }

  @Override
  public long decidedAt(int item) {
    return parts.get(item).dates().decidedAt();
  }

  @Override
  public Optional<Long> decisionsAskedSince() {
    return decisionsAskedSince;
  }

  @Override
  public long reasonGiven(int item) {
    return assembly.findKept(item).map(Assembly.Kept::since).orElse(0L);
  }

  @Override
  public List<Ban> listBans(int item, Place place) {
    return rules().listBans(parts.boundTo(place, item), place);
  }

  @Override
  public List<OpenCheck> listOpenChecks(int item, Place place) {
    return rules().listOpenChecks(parts.boundTo(place, item).part(), place);
  }

  /** The first rule that forbids a part at the place where it sits or else at its home. */
  public Optional<Ban> findBan(int item) {
    Place place = findSeat(item).orElse(parts.get(item).part().home());
    return listBans(item, place).stream().findFirst();
  }

  /** Whether a cap was machined with the rod it goes with, or bought together with it. */
  boolean isMatched(int cap) {
    return pairs.isMatched(cap);
  }

  /** Whether somebody has looked, measured or decided in this job. */
  public boolean isInspecting() {
    return inspecting;
  }

  /** Whether the job asks for a decision on every used part before it goes back. */
  public boolean decisionsAskedOfAll() {
    return decisionsAskedSince.isPresent();
  }

  /** What follows from the changes that were made and the findings that stand. */
  public StandingRules rules() {
    StandingRules now = rules.orElseGet(() -> StandingRules.of(this));
    rules = Optional.of(now);
    return now;
  }

  /** What changes mean for this engine. */
  Meanings meanings() {
    Meanings now = meanings.orElseGet(() -> new Meanings(layout(), places()));
    meanings = Optional.of(now);
    return now;
  }

  /** What was measured, and what follows from it. */
  public MeasureBook measures() {
    MeasureBook now = measures.orElseGet(() -> MeasureBook.of(this));
    measures = Optional.of(now);
    return now;
  }

  private Findings findings() {
    Findings now = findings.orElseGet(() -> new Findings(this));
    findings = Optional.of(now);
    return now;
  }
}
