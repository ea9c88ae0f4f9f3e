package wherefrom.job;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.entry.EngineReopened;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.PutInService;
import wherefrom.job.entry.RecordReopened;
import wherefrom.job.entry.ServiceDueTyped;
import wherefrom.job.entry.ServiceTicked;
import wherefrom.job.entry.SubjectPhotographed;
import wherefrom.job.entry.UsageNoted;

/** Whether the engine is in service, and what its job takes then. */
public final class InService {
  /** What is told where a job in service does not take an entry. */
  public static final String CLOSED =
      "Nothing was written. The engine is in service and its record is closed. Open the record"
          + " again first.";

  private static final EntryFold<InService> READS =
      EntryFold.<InService>none()
          .at(PutInService.class, (state, put, at) -> state.since = Optional.of(at.time()))
          .on(RecordReopened.class, (state, opened) -> state.since = Optional.empty());

  /** What a closed record takes; a step is undone where it is one of these, or closed it. */
  private static final EntryKinds TAKES =
      new EntryKinds(
          Set.of(
              UsageNoted.class,
              ServiceTicked.class,
              ServiceDueTyped.class,
              PhotoAdded.class,
              SubjectPhotographed.class,
              RecordReopened.class,
              EngineReopened.class));

  private Optional<Instant> since = Optional.empty();

  InService() {}

  /** As another is now; what changes in one of them later does not in the other. */
  InService(InService other) {
    since = other.since;
  }

  void apply(LoggedEntry logged) {
    READS.take(this, logged);
  }

  /** When it was put in service; empty where it is not. */
  public Optional<Instant> since() {
    return since;
  }

  /**
   * Whether an entry can be written now.
   *
   * @param history every entry of the job
   */
  boolean takes(JobEntry entry, List<LoggedEntry> history) {
    if (since.isEmpty() || TAKES.have(entry)) {
      return true;
    }
    return entry.findTakenBack().filter(back -> isOfService(back, history)).isPresent();
  }

  private static boolean isOfService(long sequence, List<LoggedEntry> history) {
    return history.stream()
        .filter(logged -> logged.sequence() == sequence)
        .allMatch(logged -> TAKES.have(logged.entry()) || logged.entry() instanceof PutInService);
  }
}
