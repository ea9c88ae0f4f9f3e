package wherefrom.job.running;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import wherefrom.engine.LifterType;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.change.Bought;
import wherefrom.job.entry.RunInBegun;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.entry.RunInGauge;
import wherefrom.job.entry.RunInNoted;
import wherefrom.job.entry.RunInStopped;
import wherefrom.job.entry.RunInTakenUp;
import wherefrom.job.puttogether.StartList;
import wherefrom.job.puttogether.StartPoint;
import wherefrom.job.puttogether.ToFit;
import wherefrom.job.torque.TorqueRecord;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Amount;
import wherefrom.text.Words;

/** Running an engine in: what must be seen to before, and what is kept while it runs. */
public final class RunInBook {
  private final OpenJob job;

  public RunInBook(OpenJob job) {
    this.job = job;
  }

  public Optional<RunIn> find() {
    return RunIn.find(job.state());
  }

  /** Flat where any lifter of the engine is. */
  public LifterType lifters() {
    EngineJob state = job.state();
    Bought bought = Bought.of(state);
    List<LifterType> types =
        state.places().stream()
            .filter(place -> place.kind() == PartKind.LIFTER)
            .flatMap(place -> state.findSeated(place).or(() -> state.findOwner(place)).stream())
            .map(bought::lifterType)
            .toList();
    return types.isEmpty()
        ? state.layout().lifters()
        : types.contains(LifterType.FLAT) ? LifterType.FLAT : LifterType.ROLLER;
  }

  /** What is open and has to be seen to before the engine runs, a sentence each. */
  public List<String> listOpen() {
    List<String> open = new ArrayList<>();
    int toFit = new ToFit(job).places().size();
    if (toFit > 0) {
      open.add("Still to fit: " + Words.count(toFit, "part") + ".");
    }
    besides(open);
    int stops = job.state().stops().waiting().size();
    if (stops > 0) {
      open.add("To solve: " + Words.count(stops, "stop") + ".");
    }
    TorqueRecord.open(job.state()).forEach(card -> open.add("Torque: " + card + "."));
    open.addAll(unticked());
    return open;
  }

  /** What has no part's tag: big parts that are off, wherever they are, and bags that hold on. */
  private void besides(List<String> open) {
    BagBook book = BagBook.of(job.state());
    List<String> off = book.bigPartsOff().stream().map(BigPartRecord::words).toList();
    if (!off.isEmpty()) {
      open.add("Not on the engine: " + String.join(", ", off) + ".");
    }
    int bags = book.openBags().size();
    if (bags > 0) {
      open.add("Not used up: " + Words.count(bags, "bag") + ".");
    }
  }

  /** A second person is wise; all other points of the list hold the start. */
  private List<String> unticked() {
    List<StartList.Line> lines = new StartList(job).lines();
    List<String> open = new ArrayList<>();
    lines.stream()
        .filter(line -> !line.ticked() && !line.isRocker())
        .filter(line -> !line.key().equals(StartPoint.SECOND.key()))
        .forEach(line -> open.add("Not ticked: " + line.title() + "."));
    long rockers = lines.stream().filter(line -> line.isRocker() && !line.ticked()).count();
    if (rockers > 0) {
      open.add("No oil seen yet at " + Words.count(rockers, "rocker") + ".");
    }
    return open;
  }

  /**
   * The engine runs.
   *
   * @param anyway why, although something is open; may be empty
   * @return what stops it: where something is open and no reason is given, nothing was begun
   * @throws IllegalArgumentException with a plain sentence where a run-in is on
   */
  public List<String> begin(RunInPlan plan, String anyway) {
    return job.asOne(() -> beginOnce(plan, anyway));
  }

  private List<String> beginOnce(RunInPlan plan, String anyway) {
    if (find().filter(RunIn::isRunning).isPresent()) {
      throw new IllegalArgumentException("The run-in is on already.");
    }
    List<String> open = listOpen();
    if (!open.isEmpty() && anyway.isBlank()) {
      return open;
    }
    job.record(
        new RunInBegun(
            plan.lowRpm(),
            plan.highRpm(),
            plan.minutes(),
            plan.source(),
            open.isEmpty() ? "" : anyway.strip()));
    return List.of();
  }

  /**
   * Keeps what a gauge shows now.
   *
   * @return what it asks for at once; empty where the engine may run on
   * @throws IllegalArgumentException with a plain sentence where nothing runs or the gauge shows no
   *     such thing
   */
  public Optional<RunInAlarm> note(RunInGauge gauge, Amount reading) {
    return job.asOne(() -> noteOnce(gauge, reading));
  }

  private Optional<RunInAlarm> noteOnce(RunInGauge gauge, Amount reading) {
    RunIn run = running();
    if (reading.dimension() != gauge.dimension()) {
      throw new IllegalArgumentException(
          reading.text() + " is not " + gauge.dimension().words() + ": check the unit.");
    }
    if (gauge == RunInGauge.OIL_PRESSURE && reading.number().signum() < 0) {
      throw new IllegalArgumentException("Oil pressure is never under nothing.");
    }
    job.record(new RunInNoted(gauge, reading));
    return RunInAlarm.find(gauge, reading, run.plan());
  }

  private RunIn running() {
    return find()
        .filter(RunIn::isRunning)
        .orElseThrow(() -> new IllegalArgumentException("No run-in is on."));
  }

  /**
   * The engine was stopped.
   *
   * @param at when it was
   * @param minutes how long it ran since it was begun or taken up, as the person says; asked for
   *     where the clock was left on or set back
   * @throws IllegalArgumentException with a plain sentence where nothing runs, or the minutes are
   *     wanted or cannot be
   */
  public RunIn stop(RunInEnd why, String words, Instant at, OptionalInt minutes) {
    return job.asOne(() -> stopOnce(why, words, at, minutes));
  }

  private RunIn stopOnce(RunInEnd why, String words, Instant at, OptionalInt minutes) {
    RunIn run = running();
    if (minutes.isEmpty() && run.isUnclear(at)) {
      String how = run.isSetBack(at) ? "set back" : "left on, " + clock(run, at);
      throw new IllegalArgumentException("The clock was " + how + ". Say how many minutes it ran.");
    }
    minutes.ifPresent(said -> requireFits(said, run, at));
    int seconds =
        minutes.isPresent() ? 60 * minutes.getAsInt() : (int) run.sinceTakenUp(at).toSeconds();
    job.record(new RunInStopped(why, words.strip(), seconds));
    return find().orElseThrow();
  }

  /** A clock that was set back tells nothing, so that only the most of any run-in holds. */
  private static void requireFits(int minutes, RunIn run, Instant at) {
    if (run.isSetBack(at) && minutes > RunInPlan.MOST_MINUTES) {
      throw new IllegalArgumentException(
          "A run-in takes no more than " + RunInPlan.MOST_MINUTES + " minutes.");
    }
    if (!run.isSetBack(at) && Duration.ofMinutes(minutes).compareTo(run.sinceTakenUp(at)) > 0) {
      throw new IllegalArgumentException(
          "It cannot have run longer than the clock shows, " + clock(run, at) + ".");
    }
  }

  private static String clock(RunIn run, Instant at) {
    return RunIn.clock(run.sinceTakenUp(at));
  }

  /**
   * The engine runs again.
   *
   * @param words what was put right
   * @throws IllegalArgumentException with a plain sentence where nothing was stopped, all minutes
   *     were run, or it is not said what was put right after a fault
   */
  public void takeUp(String words) {
    job.inOne(() -> takeUpOnce(words));
  }

  private void takeUpOnce(String words) {
    RunIn run = find().orElseThrow(() -> new IllegalArgumentException("No run-in was begun."));
    switch (run.state()) {
      case RUNNING -> throw new IllegalArgumentException("The run-in is on already.");
      case DONE -> throw new IllegalArgumentException("The run-in is done: all minutes were run.");
      case STOPPED -> {}
    }
    if (words.isBlank() && run.findStop().orElseThrow().why().isFault()) {
      throw new IllegalArgumentException("Say what was put right before it runs again.");
    }
    job.record(new RunInTakenUp(words.strip()));
  }
}
