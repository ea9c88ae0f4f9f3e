package wherefrom.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.PartFitted;
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

/**
 * The state of one engine job: the fold over its logbook's entries, less those taken back. It
 * changes only through {@link OpenJob}.
 */
public final class EngineJob implements Bench {
  /** From the first of these on, a part must be decided about before it is fitted. */
  private static final Set<Class<?>> FINDINGS =
      Set.of(
          LookRecorded.class,
          FeatureLooked.class,
          ReadingsTaken.class,
          DecisionMade.class,
          SetDecided.class);

  private final JobOpened opened;
  private final List<LoggedEntry> standing = new ArrayList<>();
  private final PartsLedger parts = new PartsLedger();
  private final Assembly assembly = new Assembly();
  private final Set<PartKind> kinds;
  private final List<Spot> cards;
  private boolean decisionsWanted;
  private Optional<StandingRules> rules = Optional.empty();
  private Optional<MeasureBook> measures = Optional.empty();

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
    entries.stream()
        .filter(logged -> !takenBack.contains(logged.sequence()))
        .flatMap(LoggedEntry::each)
        .filter(logged -> !(logged.entry() instanceof TakenBack))
        .forEach(job::apply);
    return job;
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
    JobEntry entry = logged.entry();
    if (entry instanceof JobOpened first) {
      parts.open(first);
    } else if (entry instanceof KindsTracked tracked) {
      kinds.addAll(tracked.kinds());
      parts.track(layout(), tracked);
    } else {
      decisionsWanted |= FINDINGS.contains(entry.getClass());
      parts.apply(logged);
      assembly.apply(entry);
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

  public Set<String> closedSections() {
    return assembly.closed();
  }

  /** The stop that waits to be solved. */
  public Optional<StopGiven> standingStop() {
    return assembly.standingStop();
  }

  /** What is so at a place. */
  public PlaceState state(Place place) {
    Optional<Part> here = findFitted(place);
    if (here.isPresent()) {
      return here.get().home().equals(place) ? PlaceState.FITTED : PlaceState.OTHER_FITTED;
    }
    if (findExcuse(place).isPresent()) {
      return PlaceState.EXCUSED;
    }
    Optional<Part> owner = findOwner(place);
    if (owner.isEmpty()) {
      return PlaceState.OPEN;
    }
    return switch (whereabouts(owner.get().item())) {
      case IN_ENGINE -> PlaceState.IN;
      case OUT -> PlaceState.OUT;
      case WASHING -> PlaceState.WASHING;
      case AT_SHOP -> PlaceState.AT_SHOP;
      case LOST -> PlaceState.MISSING;
      case FITTED, RETIRED -> PlaceState.OPEN;
    };
  }

  @Override
  public Whereabouts whereabouts(int item) {
    return parts.get(item).where();
  }

  @Override
  public Optional<String> findAwayTo(int item) {
    return parts.get(item).awayTo();
  }

  @Override
  public Optional<Part> findFitted(Place place) {
    return Optional.ofNullable(assembly.fitted().get(place)).map(item -> parts.get(item).part());
  }

  @Override
  public Optional<Place> findFittedAt(int item) {
    return assembly.findFittedAt(item);
  }

  @Override
  public Optional<Part> findOwner(Place place) {
    return parts.findOwner(place);
  }

  @Override
  public Optional<Part> findReplacement(int item) {
    return parts.findReplacement(item);
  }

  @Override
  public Look worstLook(int item) {
    Look looked = parts.get(item).worstLook();
    return worse(looked, new Findings(this).measured(item, 0));
  }

  private static Look worse(Look one, Look other) {
    return one.compareTo(other) > 0 ? one : other;
  }

  @Override
  public Look worstSinceDecision(int item) {
    return new Findings(this).sinceDecision(item);
  }

  @Override
  public Optional<Decision> findDecision(int item) {
    return parts.get(item).decision();
  }

  @Override
  public boolean decisionsWanted() {
    return decisionsWanted;
  }

  @Override
  public Optional<Ban> findBan(int item) {
    return rules().findBan(parts.get(item).part());
  }

  @Override
  public Optional<String> findOpenCheck(int item) {
    return rules().findOpenCheck(parts.get(item).part());
  }

  /** What follows from the changes that were made and the findings that stand. */
  public StandingRules rules() {
    StandingRules now = rules.orElseGet(() -> StandingRules.of(this));
    rules = Optional.of(now);
    return now;
  }

  /** What was measured, and what follows from it. */
  public MeasureBook measures() {
    MeasureBook now = measures.orElseGet(() -> MeasureBook.of(this));
    measures = Optional.of(now);
    return now;
  }
}
