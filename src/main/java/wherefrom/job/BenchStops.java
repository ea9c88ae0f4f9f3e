package wherefrom.job;

import java.util.List;
import java.util.Optional;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TakenBack;

/**
 * The stops of a job as one bench has them: which of them stands there, and how it is taken back.
 */
public final class BenchStops {
  private final OpenJob job;

  BenchStops(OpenJob job) {
    this.job = job;
  }

  private Stops all() {
    return job.state().stops();
  }

  private int bench() {
    return job.by().bench();
  }

  /**
   * The stop that stands at this bench, whatever was logged here since but a fit: whoever fitted
   * another part since has gone on, and that fit is the later step. Empty when none does.
   */
  private Optional<LoggedEntry> findStanding() {
    return all()
        .lastAt(bench())
        .filter(stop -> job.state().standing().stream().noneMatch(it -> isFitSince(it, stop)));
  }

  private boolean isFitSince(LoggedEntry logged, LoggedEntry stop) {
    return logged.sequence() > stop.sequence()
        && logged.entry() instanceof PartFitted
        && job.isOwn(logged);
  }

  /** The stop that waits at this bench, the last that was given; empty when none does. */
  public Optional<StopGiven> findWaiting() {
    return all().lastAt(bench()).map(it -> (StopGiven) it.entry());
  }

  /** When the stop was given that waits at this bench; 0 where none does. */
  public long waitingSince() {
    return all().lastAt(bench()).map(LoggedEntry::sequence).orElse(0L);
  }

  /** The stops of a part, at whatever bench; of tags that stood for no part those of this bench. */
  public List<LoggedEntry> of(int item) {
    return item == 0 ? all().ofTags(bench()) : all().of(item);
  }

  /** Takes back the stop that stands here, whatever was logged since; empty when none stands. */
  public Optional<LoggedEntry> takeBack() {
    return job.asOne(
        () -> {
          Optional<LoggedEntry> standing = findStanding();
          standing.ifPresent(step -> job.record(new TakenBack(step.sequence())));
          return standing;
        });
  }
}
