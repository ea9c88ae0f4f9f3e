package wherefrom.job;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.job.entry.EngineReopened;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.PartFitted;
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
  private final JobOpened opened;
  private final List<LoggedEntry> standing = new ArrayList<>();
  private final JobFolds folds;
  private final PartsLedger parts;
  private final Told told = new Told(this);
  private final List<Spot> cards;
  private final WorkedOut workedOut = new WorkedOut(this);
  private final JobFacts bench;
  private final PlaceStates places = new PlaceStates(this);

  private EngineJob(JobOpened opened, List<Spot> cards, JobFolds folds) {
    this.opened = opened;
    this.cards = cards;
    this.folds = folds;
    this.parts = folds.parts();
    this.bench = new JobBench(this, folds);
  }

  private static EngineJob begun(JobOpened opened) {
    return new EngineJob(opened, opened.numberedCards(), new JobFolds(opened));
  }

  /** The same state, which takes its own entries from here on. */
  EngineJob copy() {
    EngineJob copy = new EngineJob(opened, cards, new JobFolds(folds));
    copy.standing.addAll(standing);
    copy.told.takeOver(told);
    copy.workedOut.keepMeaningsOf(workedOut);
    return copy;
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
    EngineJob[] job = {begun(opened)};
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
    EngineJob next = begun(opened.again(kinds(), reopened.lifters()));
    next.parts.goOn(parts, next.layout(), NextLife.seats(reopened));
    next.told.goOn(told);
    next.standing.add(new LoggedEntry(1, standing.get(0).time(), next.opened));
    next.folds.pairs().apply(next.standing.get(0));
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
    workedOut.forget(logged.entry());
    folds.take(logged);
    told.take(logged).forEach(folds.pairs()::made);
    workedOut.remembered().forget();
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
    return folds.kinds();
  }

  /** Every entry that stands, oldest first; what was taken back is not among them. */
  public List<LoggedEntry> standing() {
    return remember(StandingList.class, job -> new StandingList(standing)).entries();
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
    return folds.seats().fitted();
  }

  /** The parts that were fitted on purpose against a stop, with the entry that says why. */
  public Collection<PartFitted> onPurpose() {
    return folds.assembly().onPurpose().values();
  }

  public Optional<String> findExcuse(Place place) {
    return Optional.ofNullable(folds.assembly().excused().get(place));
  }

  /** Why a part was left where it sits; empty as well where that was said only as it was fitted. */
  public Optional<String> findLeftIn(int item) {
    return folds.assembly().findLeftIn(item);
  }

  /** The sections that somebody closed, and where everything is right to this day. */
  public Set<String> closedSections() {
    return places.stillClosed(folds.assembly().closed());
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
    return folds.stops().last().map(it -> (StopGiven) it.entry());
  }

  /** Whether its parts are looked into, and whether each of them wants a decision. */
  public Inspection inspection() {
    return folds.inspection();
  }

  Pairs pairs() {
    return folds.pairs();
  }

  public Stops stops() {
    return folds.stops();
  }

  /** Whether the engine is in service, and its record closed. */
  public InService service() {
    return folds.service();
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
    return folds.seats().findFitted(place);
  }

  /** The place where a part was fitted. */
  public Optional<Place> findFittedAt(int item) {
    return folds.assembly().findFittedAt(item);
  }

  /** The part that sits in a place, fitted or never taken out. */
  public Optional<Part> findSeated(Place place) {
    return folds.seats().findSeated(place);
  }

  /** The place where a part sits. */
  public Optional<Place> findSeat(int item) {
    return folds.seats().findSeat(item);
  }

  /** The part in use that is at home in a place. */
  public Optional<Part> findOwner(Place place) {
    return parts.findOwner(place);
  }

  /** The first rule that forbids a part at the place where it sits or else at its home. */
  public Optional<Ban> findBan(int item) {
    Place place = findSeat(item).orElse(parts.get(item).part().home());
    return bench.listBans(item, place).stream().findFirst();
  }

  /** What follows from the changes that were made and the findings that stand. */
  public StandingRules rules() {
    return workedOut.rules();
  }

  WorkedOut workedOut() {
    return workedOut;
  }

  /** What follows from this job alone, the same until the next entry; nobody may change it. */
  public <T> T remember(Class<T> what, Function<? super EngineJob, ? extends T> maker) {
    return workedOut.remembered().get(what, maker);
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
