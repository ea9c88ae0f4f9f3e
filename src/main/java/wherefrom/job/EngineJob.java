package wherefrom.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.job.entry.EngineReopened;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.entry.StopGiven;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.quantity.UnitSystem;
import wherefrom.rules.Ban;
import wherefrom.rules.JobFacts;
import wherefrom.rules.Objection;

/**
 * The state of one engine job: the fold over its logbook's entries, less those taken back. It
 * changes only through {@link OpenJob}.
 */
public final class EngineJob {
  private static final EntryFold<EngineJob> READS =
      EntryFold.<EngineJob>none()
          .on(JobOpened.class, (job, opened) -> job.parts.open(opened))
          .on(KindsTracked.class, EngineJob::track)
          .at(PlaceExcused.class, (job, excuse, at) -> job.seats.excuse(excuse, at));

  private final JobOpened opened;
  private final List<LoggedEntry> standing = new ArrayList<>();
  private final PartsLedger parts = new PartsLedger();
  private final Assembly assembly = new Assembly();
  private final Set<PartKind> kinds;
  private final Stops stops = new Stops(parts);
  private final Seats seats = new Seats(parts, assembly);
  private final Pairs pairs = new Pairs(parts, seats);
  private final Told told = new Told(this);
  private final Inspection inspection = new Inspection();
  private final InService service = new InService();
  private final List<Spot> cards;
  private final WorkedOut workedOut = new WorkedOut(this);
  private final JobFacts bench = new JobBench(this, parts, assembly, pairs);
  private final PlaceStates places = new PlaceStates(this);

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
    EngineJob[] job = {new EngineJob(opened)};
    StandingEntries.tell(entries, logged -> job[0] = job[0].after(logged));
    return job[0];
  }

  /** The state with the next entry, which must not be one that takes back. */
  EngineJob after(LoggedEntry logged) {
    if (logged.entry() instanceof EngineReopened reopened) {
      return nextLife(reopened, logged);
    }
    apply(logged);
    return this;
  }

  private EngineJob nextLife(EngineReopened reopened, LoggedEntry logged) {
    EngineJob next = new EngineJob(opened.again(kinds, reopened.lifters()));
    next.parts.goOn(parts, next.layout(), NextLife.seats(reopened));
    next.told.goOn(told);
    next.standing.add(new LoggedEntry(1, standing.get(0).time(), next.opened));
    next.pairs.apply(next.standing.get(0));
    next.standing.addAll(NextLife.carried(this));
    next.standing.add(logged);
    return next;
  }

  EngineJob anew(List<LoggedEntry> entries) {
    EngineJob job = of(entries);
    job.workedOut.keepMeaningsOf(workedOut);
    return job;
  }

  private void apply(LoggedEntry read) {
    LoggedEntry logged = ChangesOfBefore.read(read, units());
    standing.add(logged);
    places.forget();
    if (!BesideParts.KINDS.have(logged.entry())) {
      workedOut.forget();
    }
    take(logged);
    pairs.apply(logged);
    told.take(logged).forEach(pairs::made);
  }

  private void take(LoggedEntry logged) {
    READS.take(this, logged);
    inspection.apply(logged);
    parts.apply(logged);
    assembly.apply(logged);
    stops.apply(logged);
    service.apply(logged);
  }

  private void track(KindsTracked tracked) {
    kinds.addAll(tracked.kinds());
    workedOut.forgetMeanings();
    parts.track(layout(), tracked);
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

  /** The engine's arrangement. */
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

  PartsLedger ledger() {
    return parts;
  }

  /** What is fitted where now. */
  public Map<Place, Part> fitted() {
    return seats.fitted();
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

  /** The sections that somebody closed, and where everything is right to this day. */
  public Set<String> closedSections() {
    return places.stillClosed(assembly.closed());
  }

  /** Whether a place needs nothing more: its part is in and right, or it is empty for a reason. */
  public boolean isFilled(Place place) {
    return places.isFilled(place);
  }

  /** What stands against the part that sits in a place; empty where nothing does or none sits. */
  public List<Objection> listAgainst(Place place) {
    return places.listAgainst(place);
  }

  /** The last stop that waits to be solved, at whatever bench it stands. */
  public Optional<StopGiven> standingStop() {
    return stops.last().map(it -> (StopGiven) it.entry());
  }

  public Stops stops() {
    return stops;
  }

  /** Whether the engine is in service, and its record closed. */
  public InService service() {
    return service;
  }

  public PlaceState state(Place place) {
    return places.of(place);
  }

  /** The job as the rules see it. */
  public JobFacts bench() {
    return bench;
  }

  /** Where a part is now. */
  public Whereabouts whereabouts(int item) {
    return parts.get(item).where();
  }

  /** The part that was fitted in a place. */
  public Optional<Part> findFitted(Place place) {
    return seats.findFitted(place);
  }

  /** The place where a part was fitted. */
  public Optional<Place> findFittedAt(int item) {
    return assembly.findFittedAt(item);
  }

  /** The part that sits in a place, fitted or never taken out. */
  public Optional<Part> findSeated(Place place) {
    return seats.findSeated(place);
  }

  /** The place where a part sits. */
  public Optional<Place> findSeat(int item) {
    return seats.findSeat(item);
  }

  /** The part in use that is at home in a place. */
  public Optional<Part> findOwner(Place place) {
    return parts.findOwner(place);
  }

  /** The entry since which the job asks for a decision on every used part. */
  Optional<Long> decisionsAskedSince() {
    return inspection.askedSince();
  }

  /** The first rule that forbids a part at the place where it sits or else at its home. */
  public Optional<Ban> findBan(int item) {
    Place place = findSeat(item).orElse(parts.get(item).part().home());
    return bench.listBans(item, place).stream().findFirst();
  }

  boolean cameWithItsRod(int cap) {
    return pairs.cameWithItsRod(cap);
  }

  /** Whether somebody has looked, measured or decided in this job. */
  public boolean isInspecting() {
    return inspection.isBegun();
  }

  /** Whether the job asks for a decision on every used part before it goes back. */
  public boolean decisionsAskedOfAll() {
    return inspection.askedSince().isPresent();
  }

  /** What follows from the changes that were made and the findings that stand. */
  public StandingRules rules() {
    return workedOut.rules();
  }

  WorkedOut workedOut() {
    return workedOut;
  }

  /** What was measured, and what follows from it. */
  public MeasureBook measures() {
    return workedOut.measures();
  }

  /** What rules and sizes are worked out from. */
  public Told told() {
    return told;
  }
}
