package wherefrom.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TagReissued;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.job.entry.TakenBack;

/**
 * The UNDO of a bench: what others did stays. It never skips a thing unsaid: what cannot be taken
 * back is told first.
 */
public final class Undo {
  private static final EntryTable<Undo, String> WHY_KEPT =
      EntryRows.<Undo, String>none()
          .on(TagReissued.class, (undo, reissued) -> " A new tag may exist.")
          .on(TagsPrinted.class, (undo, printed) -> " What is printed exists.")
          .on(KindsTracked.class, (undo, tracked) -> " Their tags may exist.")
          .others("");

  private final OpenJob job;

  /** The last thing done here when it was told that it stays; 0 where none was told. */
  private long told;

  Undo(OpenJob job) {
    this.job = job;
  }

  /** What {@link #press} takes back now; empty where it tells instead, or nothing is left. */
  Optional<LoggedEntry> findStep() {
    return isTold() ? findLast(JobEntry::canBeTakenBack) : findLast(any -> true).filter(this::goes);
  }

  private boolean isTold() {
    return told != 0 && told == job.ownSequence();
  }

  private boolean goes(LoggedEntry step) {
    return step.entry().canBeTakenBack();
  }

  /** Takes the last step back, or tells why not. Pressed again, it takes the one before. */
  Undone press() {
    Optional<LoggedEntry> last = findLast(any -> true);
    if (last.isEmpty() || goes(last.get()) || isTold()) {
      return pressBefore();
    }
    told = job.ownSequence();
    return findLast(JobEntry::canBeTakenBack)
        .<Undone>map(before -> new Undone.Kept(last.get(), why(last.get()), words(before)))
        .orElseGet(Undone.NothingLeft::new);
  }

  /** Takes back the last step that can be, whatever stays that was done since. */
  Undone pressBefore() {
    return job.asOne(
        () ->
            findLast(JobEntry::canBeTakenBack)
                .<Undone>map(this::take)
                .orElseGet(Undone.NothingLeft::new));
  }

  private Undone take(LoggedEntry step) {
    String words = words(step);
    job.record(new TakenBack(step.sequence()));
    return new Undone.TookBack(step, words);
  }

  private String words(LoggedEntry step) {
    return EntryWords.of(job.state(), step.entry());
  }

  private String why(LoggedEntry kept) {
    return "Not undone: " + words(kept) + "." + WHY_KEPT.of(this, kept.entry().each().get(0));
  }

  /** This bench's last step of this sort, an act whole. A stop counts only while it stands. */
  private Optional<LoggedEntry> findLast(Predicate<JobEntry> sort) {
    List<LoggedEntry> standing = job.state().standing();
    for (int at = standing.size() - 1; at > 0; at--) {
      if (standing.get(at).by().bench() != job.by().bench()) {
        continue;
      }
      LoggedEntry step = whole(standing, standing.get(at).sequence());
      if (!isSpentStop(step) && sort.test(step.entry())) {
        return Optional.of(step);
      }
    }
    return Optional.empty();
  }

  private boolean isSpentStop(LoggedEntry step) {
    return step.entry() instanceof StopGiven
        && job.state().stops().waiting().stream().noneMatch(it -> it.sequence() == step.sequence());
  }

  /** The step with this sequence; where it is an act, all of it. */
  public static LoggedEntry whole(List<LoggedEntry> standing, long sequence) {
    List<LoggedEntry> parts =
        standing.stream().filter(logged -> logged.sequence() == sequence).toList();
    LoggedEntry first = parts.get(0);
    JobEntry entry = Act.of(parts.stream().map(LoggedEntry::entry).toList());
    return first.with(entry);
  }
}
