package wherefrom.ui.app;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import wherefrom.job.OpenJob;
import wherefrom.job.ports.SecondCopies;
import wherefrom.job.ports.SecondCopies.Outcome;
import wherefrom.job.settings.Settings;

/**
 * Copies each job to the second folder when it is put away, when nobody has worked on it for a
 * while, and when the window closes; one after the other, away from the window's thread.
 */
public final class Copying {
  private static final long CLOSING_SECONDS = 60;
  private static final String STOPPED =
      "The copy was stopped. It starts again after the next step.";

  /** What came of a job's copy. */
  private record Done(Path job, Outcome outcome) {}

  private static final Logger LOGGER = Logger.getLogger("wherefrom");

  private final ScreenContext context;
  private final SecondCopies copies;
  private final LongWorks works;
  private final Executor workers;
  private final Runnable told;
  private final Queue<Done> done = new ConcurrentLinkedQueue<>();
  private final Map<Path, Outcome.Failed> failed = new HashMap<>();

  /** The last entry of a job that a copy was tried with: a full USB drive is not tried for ever. */
  private final Map<Path, Long> tried = new HashMap<>();

  /** Jobs whose copy is surely on the USB drive itself. */
  private final Set<Path> settled = new HashSet<>();

  private final Quiet quiet = new Quiet();

  private boolean finished;
  private CompletableFuture<Boolean> line = CompletableFuture.completedFuture(true);

  /**
   * @param told is run on the window's thread when there is news of a copy
   */
  Copying(ScreenContext context, LongWorks works, Executor workers, Runnable told) {
    this.context = context;
    this.works = works;
    this.copies = new SecondCopies(context.services().backups(), context.services().clock());
    this.workers = workers;
    this.told = told;
  }

  /** A job was put away. */
  void left(Path job) {
    context.settings().secondCopy().ifPresent(second -> begin(job, second));
  }

  /** To be asked every now and then: copies the open job when nobody has worked on it lately. */
  public void idle() {
    Optional<Path> second = context.settings().secondCopy();
    if (second.isPresent() && context.job().isPresent() && line.isDone()) {
      OpenJob job = context.job().get();
      if (quiet.is(job, context.services().clock().instant()) && isWanted(job)) {
        tried.put(job.folder(), job.sequence());
        begin(job.folder(), second.get());
      }
    }
  }

  private boolean isWanted(OpenJob job) {
    Outcome.Failed before = failed.get(job.folder());
    boolean hopeless =
        before != null
            && !before.away()
            && Long.valueOf(job.sequence()).equals(tried.get(job.folder()));
    return isBehind(job.folder(), job.sequence()) && !hopeless;
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
    boolean noted = done.add(new Done(job, outcome(job, second)));
    Platform.runLater(this::news);
    return noted;
  }

  private Outcome outcome(Path job, Path second) {
    try {
      return works.watched("Copying the job", () -> copies.copy(job, second));
    } catch (CancellationException e) {
      return new Outcome.Failed(false, STOPPED);
    } catch (Exception e) {
      throw new IllegalStateException("a copy that tells what is wrong failed", e);
    }
  }

  private void news() {
    if (!finished) {
      take();
      told.run();
    }
  }

  /** Takes in what has come of the copies. */
  private void take() {
    Settings before = context.settings();
    Settings now = before;
    for (Done next = done.poll(); next != null; next = done.poll()) {
      if (next.outcome() instanceof Outcome.Made made) {
        failed.remove(next.job());
        settle(next.job(), made.settled());
        now = now.withCopied(next.job(), made.copy());
      } else {
        failed.put(next.job(), (Outcome.Failed) next.outcome());
      }
    }
    if (!now.equals(before)) {
      context.change(now);
    }
  }

  private void settle(Path job, boolean whole) {
    if (whole) {
      settled.add(job);
    } else {
      settled.remove(job);
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
      // What was copied before stands on the USB drive; the next sitting copies again.
    }
    take();
    finished = true;
  }

  /**
   * How the copy of a job stands, in a sentence or two; empty where no copies are wanted.
   *
   * @param sequence of the job's last entry
   */
  public Optional<String> words(Path job, long sequence) {
    take();
    return context.settings().secondCopy().map(second -> standing(job, second, sequence));
  }

  /** What keeps a troubled job from being copied, in few words. */
  public String brief() {
    boolean away = context.settings().secondCopy().flatMap(SecondCopies::findAway).isPresent();
    return away ? "No USB drive: not copied" : "The copy failed";
  }

  /** Whether the last try to copy a job failed, or the next would: the USB drive is not there. */
  public boolean isTroubled(Path job, long sequence) {
    return context
        .settings()
        .secondCopy()
        .flatMap(second -> findTrouble(job, second, sequence))
        .isPresent();
  }

  private Optional<String> findTrouble(Path job, Path second, long sequence) {
    return Optional.ofNullable(failed.get(job))
        .map(Outcome.Failed::sentence)
        .or(() -> isBehind(job, sequence) ? SecondCopies.findAway(second) : Optional.empty());
  }

  /** By what was copied, never by the time of day: a clock that was put right says nothing. */
  private boolean isBehind(Path job, long sequence) {
    return context.settings().findCopied(job).filter(copy -> copy.upTo() >= sequence).isEmpty();
  }

  private String standing(Path job, Path second, long sequence) {
    Optional<Settings.Copy> copied = context.settings().findCopied(job);
    String last =
        copied
            .map(copy -> "Last copied " + Dates.ago(copy.time(), context.services().clock()) + ".")
            .orElse("Not copied yet.");
    String since = copied.isPresent() ? last + since(job, sequence) : last;
    return findTrouble(job, second, sequence).map(trouble -> trouble + " " + since).orElse(since);
  }

  private String since(Path job, long sequence) {
    if (isBehind(job, sequence)) {
      return " It has changed since.";
    }
    return settled.contains(job) && line.isDone() ? " Safe to pull out." : "";
  }
}
