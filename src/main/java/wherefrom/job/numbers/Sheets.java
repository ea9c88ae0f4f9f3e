package wherefrom.job.numbers;

import java.util.Map;
import java.util.Optional;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.FiguresKept;

/** The sheets of figures that the job keeps. */
public final class Sheets {
  private final OpenJob job;

  public Sheets(OpenJob job) {
    this.job = job;
  }

  /** The sheet as it stands; empty where it was never written or was thrown away. */
  public Optional<Sheet> find(String key) {
    Optional<Sheet> found = Optional.empty();
    for (LoggedEntry logged : job.state().standing()) {
      if (logged.entry() instanceof FiguresKept kept
          && WorkingBook.today(kept.sheet()).equals(key)) {
        found =
            kept.name().isEmpty()
                ? Optional.empty()
                : Optional.of(new Sheet(kept.name(), kept.figures()));
      }
    }
    return found;
  }

  /** Keeps a sheet; nothing is written where it is as it was. */
  public void keep(String key, Sheet sheet) {
    job.inOne(() -> keepOnce(key, sheet));
  }

  private void keepOnce(String key, Sheet sheet) {
    if (!find(key).equals(Optional.of(sheet))) {
      job.record(new FiguresKept(key, sheet.name(), sheet.figures()));
    }
  }

  /** Throws a sheet away; taking the step back brings it again. */
  public void drop(String key) {
    job.inOne(() -> dropOnce(key));
  }

  private void dropOnce(String key) {
    if (find(key).isPresent()) {
      job.record(new FiguresKept(key, "", Map.of()));
    }
  }
}
