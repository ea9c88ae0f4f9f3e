package wherefrom.ui.running;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.RunInEnd;
import wherefrom.job.entry.RunInGauge;
import wherefrom.job.entry.RunInStopped;
import wherefrom.job.running.RunIn;
import wherefrom.job.running.RunInAlarm;
import wherefrom.text.Words;

/** What the run-in's clock says. */
final class RunInModel {
  private static final Duration MINUTE = Duration.ofMinutes(1);

  private final Clock clock;
  private final RunIn run;

  private RunInModel(RunIn run, Clock clock) {
    this.clock = clock;
    this.run = run;
  }

  /** Empty where none was begun, or where its begin was taken back, here or at another bench. */
  static Optional<RunInModel> find(OpenJob job, Clock clock) {
    return RunIn.find(job.state()).map(run -> new RunInModel(run, clock));
  }

  private Instant now() {
    return clock.instant();
  }

  RunIn.State state() {
    return run.state();
  }

  boolean isTimeUp() {
    return run.left(now()).isZero();
  }

  /** What stands there large: the clock, but for what cannot wait. */
  String large() {
    if (alarm().isPresent()) {
      return "STOP";
    }
    return state() == RunIn.State.DONE ? "DONE" : RunIn.clock(run.left(now()));
  }

  /** What the large figure is, and what to do. */
  String caption(boolean brief) {
    String plan = brief ? run.plan().speed() : "left of " + run.plan().words();
    return switch (state()) {
      case RUNNING ->
          alarm()
              .map(alarm -> brief ? firstOf(alarm.sentence()) : alarm.sentence())
              .orElse(isTimeUp() ? "Time is up. Let it slow down, then stop." : plan);
      case STOPPED -> stopped(brief);
      case DONE -> run.plan().words();
    };
  }

  /** The key below says to put the ignition off; what is usual was read before it ran. */
  private static String firstOf(String sentences) {
    return Words.sentences(sentences).get(0);
  }

  /** Goes on from the minutes that stand large. */
  private String stopped(boolean brief) {
    Optional<RunInEnd> end = findEnd();
    String why = end.map(RunInEnd::words).orElse("");
    String first = end.map(RunInEnd::first).orElse("");
    if (brief) {
      return "left. " + (first.isEmpty() ? Words.sentence(why) : first);
    }
    return "left when stopped: " + why + "." + (first.isEmpty() ? "" : " " + first);
  }

  Optional<RunInStopped> findStop() {
    return run.findStop();
  }

  private Optional<RunInEnd> findEnd() {
    return findStop().map(RunInStopped::why);
  }

  /** Whether it was stopped for something that has to be put right before it runs again. */
  boolean isFaulty() {
    return state() == RunIn.State.STOPPED && findEnd().filter(RunInEnd::isFault).isPresent();
  }

  /** What the gauges ask for while it runs, as they were noted last. */
  Optional<RunInAlarm> alarm() {
    return run.findAlarm();
  }

  /** {@code Oil pressure: 52 psi}; in fewer words {@code Oil: 52 psi}. */
  String gauge(RunInGauge gauge, boolean brief) {
    String shown =
        run.lastNote(gauge).map(note -> note.noted().reading().text()).orElse("not noted");
    String words = brief ? gauge.words().replaceFirst(" .*", "") : gauge.words();
    return Words.capital(words) + ": " + shown;
  }

  /** When it was noted last, and whether it is time to note it again. */
  String since(RunInGauge gauge) {
    Optional<RunIn.Note> last = run.lastNote(gauge);
    Duration ran = run.ran(now());
    boolean again =
        state() == RunIn.State.RUNNING
            && last.filter(note -> ran.minus(note.at()).compareTo(MINUTE) < 0).isEmpty();
    String at = last.map(note -> "at " + RunIn.clock(note.at())).orElse("");
    return again ? (at.isEmpty() ? "Note it now" : at + ". Note it now") : at;
  }
}
