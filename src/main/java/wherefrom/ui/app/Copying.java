package wherefrom.ui.app;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.SecondCopies;
import wherefrom.job.SecondCopies.Outcome;
import wherefrom.job.Settings;

/**
 * Copies each job to the second folder when it is put away, when nobody has worked on it for a
 * while, and when the window closes; one after the other, away from the window's thread.
 */
public final class Copying {
  private static final Duration WHILE = Duration.ofMinutes(2);
  private static final long CLOSING_SECONDS = 60;

  /** What came of a job's copy. */
  private record Done(Path job, Outcome outcome) {}

  private static final Logger LOGGER = Logger.getLogger("wherefrom");

  private final Desk desk;
  private final SecondCopies copies;
  private final Executor workers;
  private final Runnable told;
  private final Queue<Done> done = new ConcurrentLinkedQueue<>();
  private final Map<Path, Outcome.Failed> failed = new HashMap<>();

  /** The last entry of a job that a copy was tried with: a full stick is not tried for ever. */
  private final Map<Path, Instant> tried = new HashMap<>();

  private boolean finished;
  private CompletableFuture<Boolean> line = CompletableFuture.completedFuture(true);

  /**
   * @param told is run on the window's thread when there is news of a copy
   */
  Copying(Desk desk, Executor workers, Runnable told) {
    this.desk = desk;
    this.copies = new SecondCopies(desk.equipment().backups(), desk.equipment().clock());
    this.workers = workers;
    this.told = told;
  }

  /** A job was put away. */
  void left(Path job) {
    desk.settings().secondCopy().ifPresent(second -> begin(job, second));
  }

  /** To be asked every now and then: copies the open job when nobody has worked on it lately. */
  void idle() {
    Optional<Path> second = desk.settings().secondCopy();
    if (second.isPresent() && desk.job().isPresent() && line.isDone()) {
      OpenJob job = desk.job().get();
      Instant last = lastEntry(job);
      boolean quiet = !last.plus(WHILE).isAfter(desk.equipment().clock().instant());
      if (quiet && isWanted(job.folder(), last)) {
        tried.put(job.folder(), last);
        begin(job.folder(), second.get());
      }
    }
  }

  private boolean isWanted(Path job, Instant last) {
    Outcome.Failed before = failed.get(job);
    boolean hopeless = before != null && !before.away() && last.equals(tried.get(job));
    boolean behind =
        desk.settings().findCopied(job).filter(copied -> !copied.isBefore(last)).isEmpty();
    return behind && !hopeless;
  }

  private static Instant lastEntry(OpenJob job) {
    LoggedEntry last = job.history().get(job.history().size() - 1);
    return last.time();
  }

  private void begin(Path job, Path second) {
    line = line.exceptionally(Copying::logged).thenApplyAsync(before -> copy(job, second), workers);
  }

  private static boolean logged(Throwable failure) {
    LOGGER.log(Level.SEVERE, "A copy failed", failure);
    return false;
  }

  /** Away from the window's thread. */
  private boolean copy(Path job, Path second) {
    boolean noted = done.add(new Done(job, copies.copy(job, second)));
    Platform.runLater(this::news);
    return noted;
  }

  private void news() {
    if (!finished) {
      take();
      told.run();
    }
  }

  /** Takes in what has come of the copies. */
  private void take() {
    Settings before = desk.settings();
    Settings now = before;
    for (Done next = done.poll(); next != null; next = done.poll()) {
      if (next.outcome() instanceof Outcome.Made made) {
        failed.remove(next.job());
        now = now.withCopied(next.job(), made.time());
      } else {
        failed.put(next.job(), (Outcome.Failed) next.outcome());
      }
    }
    if (!now.equals(before)) {
      desk.change(now);
    }
  }

  /** The window has closed: waits for the copies that are being made, a minute at most. */
  void finish() {
    try {
      line.get(CLOSING_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException | TimeoutException e) {
      logged(e);
      // What was copied before stands on the stick; the next sitting copies again.
    }
    take();
    finished = true;
  }

  /**
   * How the copy of a job stands, in a sentence or two; empty where no copies are wanted.
   *
   * @param touched when the job was last worked on
   */
  public Optional<String> words(Path job, Instant touched) {
    take();
    return desk.settings().secondCopy().map(second -> standing(job, second, touched));
  }

  /** Whether the last try to copy a job failed, or the next would: the stick is not there. */
  public boolean isTroubled(Path job, Instant touched) {
    return desk.settings()
        .secondCopy()
        .flatMap(second -> findTrouble(job, second, touched))
        .isPresent();
  }

  private Optional<String> findTrouble(Path job, Path second, Instant touched) {
    return Optional.ofNullable(failed.get(job))
        .map(Outcome.Failed::sentence)
        .or(() -> isBehind(job, touched) ? SecondCopies.findAway(second) : Optional.empty());
  }

  private boolean isBehind(Path job, Instant touched) {
    return desk.settings().findCopied(job).filter(time -> !time.isBefore(touched)).isEmpty();
  }

  private String standing(Path job, Path second, Instant touched) {
    Optional<Instant> copied = desk.settings().findCopied(job);
    String last =
        copied
            .map(time -> "Last copied " + Dates.ago(time, desk.equipment().clock()) + ".")
            .orElse("Not copied yet.");
    String since =
        copied.isPresent() && isBehind(job, touched) ? last + " It has changed since." : last;
    return findTrouble(job, second, touched).map(trouble -> trouble + " " + since).orElse(since);
  }
}
