package wherefrom.job.running;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.RunInBegun;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.entry.RunInGauge;
import wherefrom.job.entry.RunInNoted;
import wherefrom.job.entry.RunInStopped;
import wherefrom.job.entry.RunInTakenUp;

/**
 * A run-in as its entries tell it. Nothing counts on in between: how long it has run follows from
 * when it was begun, stopped and taken up, so that it goes on through a restart of the program.
 */
public final class RunIn {
  private static final EntryFold<List<RunIn>> READS =
      EntryFold.<List<RunIn>>none()
          .at(
              RunInBegun.class,
              (runs, begun, at) -> {
                running(runs).ifPresent(it -> it.givesWay(at.time()));
                runs.add(new RunIn(begun, at.time()));
              })
          .at(
              RunInTakenUp.class,
              (runs, again, at) ->
                  stopped(runs).ifPresent(it -> it.begin(at.time(), again.words())))
          .at(
              RunInNoted.class,
              (runs, note, at) -> running(runs).ifPresent(it -> it.note(note, at)))
          .on(RunInStopped.class, (runs, stop) -> running(runs).ifPresent(it -> it.stop(stop)));

  /**
   * So long past its minutes nobody stands beside it any more: the clock was left on (common
   * practice, no source).
   */
  private static final Duration LEFT_ON = Duration.ofMinutes(30);

  /** Whether it runs. */
  public enum State {
    RUNNING,
    STOPPED,
    DONE
  }

  /**
   * The engine ran without a break.
   *
   * @param from when it was begun or taken up
   * @param words what was put right before it; may be empty
   * @param end empty while it runs
   */
  public record Stretch(Instant from, String words, Optional<RunInStopped> end) {}

  /**
   * A gauge that was read.
   *
   * @param at how long the engine had run in then
   * @param when by the clock
   */
  public record Note(Duration at, RunInNoted noted, Instant when) {}

  private final RunInPlan plan;
  private final String anyway;
  private final List<Stretch> stretches = new ArrayList<>();
  private final List<Note> notes = new ArrayList<>();

  /** What was read before the engine was taken up again asks for nothing any more. */
  private int firstNote;

  private RunIn(RunInBegun begun, Instant from) {
    this.plan = RunInPlan.of(begun);
    this.anyway = begun.anyway();
    begin(from, "");
  }

  /** Every run-in of a job, oldest first. */
  public static List<RunIn> all(EngineJob job) {
    List<RunIn> runs = new ArrayList<>();
    job.standing().forEach(logged -> READS.take(runs, logged));
    return runs;
  }

  /** The one that counts: the last that was begun. */
  public static Optional<RunIn> find(EngineJob job) {
    return last(all(job));
  }

  private static Optional<RunIn> last(List<RunIn> runs) {
    return runs.isEmpty() ? Optional.empty() : Optional.of(runs.get(runs.size() - 1));
  }

  /** An entry whose counterpart was undone changes no other run. */
  private static Optional<RunIn> running(List<RunIn> runs) {
    return last(runs).filter(RunIn::isRunning);
  }

  private static Optional<RunIn> stopped(List<RunIn> runs) {
    return last(runs).filter(run -> !run.isRunning());
  }

  /**
   * Another was begun though the stop of this one was undone: it ran until then, or, where the
   * clock says nothing, not at all.
   */
  private void givesWay(Instant next) {
    long seconds = isUnclear(next) ? 0 : sinceTakenUp(next).toSeconds();
    stop(new RunInStopped(RunInEnd.OTHER, "another was begun", (int) seconds));
  }

  private void begin(Instant from, String words) {
    firstNote = notes.size();
    stretches.add(new Stretch(from, words, Optional.empty()));
  }

  private void note(RunInNoted note, LoggedEntry at) {
    notes.add(new Note(ran(at.time()), note, at.time()));
  }

  private void stop(RunInStopped stop) {
    Stretch ended = current();
    stretches.set(
        stretches.size() - 1, new Stretch(ended.from(), ended.words(), Optional.of(stop)));
  }

  private Stretch current() {
    return stretches.get(stretches.size() - 1);
  }

  public RunInPlan plan() {
    return plan;
  }

  /** Why it was begun although something was open; empty where nothing was. */
  public String anyway() {
    return anyway;
  }

  public List<Stretch> stretches() {
    return List.copyOf(stretches);
  }

  /** What was read, oldest first. */
  public List<Note> notes() {
    return List.copyOf(notes);
  }

  /** What a gauge showed last. */
  public Optional<Note> lastNote(RunInGauge gauge) {
    return notes.stream()
        .filter(note -> note.noted().gauge() == gauge)
        .reduce((before, after) -> after);
  }

  /** What a gauge asks for that it showed last since it runs; empty where it may run on. */
  public Optional<RunInAlarm> alarm(RunInGauge gauge) {
    return noteSinceTakenUp(gauge)
        .flatMap(note -> RunInAlarm.find(gauge, note.noted().reading(), plan));
  }

  private Optional<Note> noteSinceTakenUp(RunInGauge gauge) {
    return notes.subList(firstNote, notes.size()).stream()
        .filter(note -> note.noted().gauge() == gauge)
        .reduce((before, after) -> after);
  }

  /** What the gauges ask for while it runs, as they were noted last. */
  public Optional<RunInAlarm> findAlarm() {
    return isRunning()
        ? Arrays.stream(RunInGauge.values()).flatMap(gauge -> alarm(gauge).stream()).findFirst()
        : Optional.empty();
  }

  /** When a gauge was noted that asks for the engine to be stopped; empty where it may run on. */
  public Optional<Instant> findAlarmed() {
    return isRunning()
        ? Arrays.stream(RunInGauge.values())
            .filter(gauge -> alarm(gauge).isPresent())
            .flatMap(gauge -> noteSinceTakenUp(gauge).stream())
            .map(Note::when)
            .min(Instant::compareTo)
        : Optional.empty();
  }

  public boolean isRunning() {
    return current().end().isEmpty();
  }

  /** The stop that stands; empty while it runs. */
  public Optional<RunInStopped> findStop() {
    return current().end();
  }

  /** Stopped is done where all its minutes were run. */
  public State state() {
    if (isRunning()) {
      return State.RUNNING;
    }
    return left(current().from()).isZero() ? State.DONE : State.STOPPED;
  }

  /** How long the present stretch has run; a clock that was set back counts nothing. */
  Duration sinceTakenUp(Instant now) {
    return current()
        .end()
        .map(stop -> Duration.ofSeconds(stop.seconds()))
        .orElseGet(() -> atLeastNone(Duration.between(current().from(), now)));
  }

  /** How long it has run in all, to whole seconds. */
  public Duration ran(Instant now) {
    long before =
        stretches.subList(0, stretches.size() - 1).stream()
            .flatMap(stretch -> stretch.end().stream())
            .mapToLong(RunInStopped::seconds)
            .sum();
    return Duration.ofSeconds(before + sinceTakenUp(now).toSeconds());
  }

  /** How long it has to run yet; never under nothing. */
  public Duration left(Instant now) {
    return atLeastNone(Duration.ofMinutes(plan.minutes()).minus(ran(now)));
  }

  /** How long it has run up to its last stop. */
  Duration ranUntilStop() {
    return ran(current().from());
  }

  /** Whether the clock was set back to before it was begun or taken up. */
  public boolean isSetBack(Instant now) {
    return isRunning() && now.isBefore(current().from());
  }

  /** Whether the clock does not say how long it ran, so that the person has to. */
  public boolean isUnclear(Instant now) {
    return isLeftOn(now) || isSetBack(now);
  }

  /** Whether the clock ran on so long that nobody knows when the engine was stopped. */
  public boolean isLeftOn(Instant now) {
    Duration most = Duration.ofMinutes(plan.minutes()).plus(LEFT_ON);
    return isRunning() && ran(now).compareTo(most) > 0;
  }

  private static Duration atLeastNone(Duration time) {
    return time.isNegative() ? Duration.ZERO : time;
  }

  /** {@code 7:05}, or {@code 1:07:05} from an hour on. */
  public static String clock(Duration time) {
    return time.toHours() == 0
        ? time.toMinutes() + ":" + twoDigits(time.toSecondsPart())
        : time.toHours()
            + ":"
            + twoDigits(time.toMinutesPart())
            + ":"
            + twoDigits(time.toSecondsPart());
  }

  private static String twoDigits(int part) {
    return String.format(Locale.ROOT, "%02d", part);
  }
}
