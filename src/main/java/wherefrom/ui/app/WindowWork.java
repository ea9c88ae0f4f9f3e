package wherefrom.ui.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import wherefrom.files.Progress;
import wherefrom.job.EntryWords;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.UnsentException;
import wherefrom.rules.Cue;

/**
 * Work that the window has done for it: what may fail with a sentence, what is slow, what needs the
 * camera. Used on the window's thread only, but for {@link #background}.
 */
public abstract class WindowWork {

  /** Work that may fail with a sentence for the person. */
  @FunctionalInterface
  public interface Work {
    void run() throws IOException;
  }

  private static final Logger LOGGER = Logger.getLogger("wherefrom");

  private final WindowFrame front;
  private final Executor workers;
  private final LongWorks works;
  private final Lock cameraTurn = new ReentrantLock();
  private final UnsentWork unsent = new UnsentWork();
  private int failures;

  WindowWork(WindowFrame front, LongSupplier nanos, Executor workers) {
    this.front = front;
    this.workers = workers;
    this.works = new LongWorks(front, nanos);
  }

  LongWorks works() {
    return works;
  }

  /** The way to other screens. */
  public abstract Navigator navigator();

  /** The job on the bench. */
  public abstract Optional<OpenJob> job();

  /** The sounds, or none where the person has turned them off. */
  public abstract VerdictSounds sounds();

  /** Tells the person something in a sentence. */
  public abstract void say(String sentence);

  /**
   * Does something that may fail with a plain sentence, and shows the sentence where it does.
   *
   * @return whether it went well
   */
  public boolean attempt(Work work) {
    try {
      work.run();
      return true;
    } catch (UnsentException e) {
      keep(work, e);
      return false;
    } catch (IOException | LogbookException | IllegalArgumentException e) {
      fail(sentence(e));
      return false;
    }
  }

  /** What waits to be sent again did not fail: whoever asked for it does not ask again. */
  private void keep(Work work, UnsentException away) {
    sounds().play(Cue.ASK);
    if (job().filter(open -> unsent.keep(new UnsentWork.Kept(open, work, away))).isPresent()) {
      say(sentence(away) + " What you did is sent again when it is back.");
    } else {
      fail(sentence(away) + " Wait until it is back.");
    }
  }

  /**
   * The store may be within reach again: what was kept is written by now, or is done again, as the
   * same act.
   */
  void sendAgain(OpenJob job) {
    unsent
        .take(job)
        .ifPresent(
            sent -> {
              attempt(() -> sendAgain(sent));
              navigator().changed();
            });
  }

  private void sendAgain(UnsentWork.Kept sent) {
    Optional<LoggedEntry> written = settled(sent);
    written.ifPresent(it -> say("Kept: " + EntryWords.of(sent.job().state(), it.entry()) + "."));
    sent.left(written).ifPresent(this::perform);
  }

  /** Where the store is out of reach still, the work goes on waiting. */
  private Optional<LoggedEntry> settled(UnsentWork.Kept sent) {
    try {
      return sent.job().settle(sent.said());
    } catch (UnsentException e) {
      unsent.keep(sent);
      throw e;
    }
  }

  /** The job is put away: what waited for it is not sent any more, which is said. */
  void leave(OpenJob job) {
    unsent
        .take(job)
        .ifPresent(
            waits ->
                say(
                    "Your last step in "
                        + job.state().name()
                        + " may not be written. Look there before you do it again."));
  }

  /** Says why something was not done, so that who asked for it asks again. */
  public void fail(String sentence) {
    failures++;
    say(sentence);
  }

  /**
   * Does something that may fail at any depth.
   *
   * @return whether all of it went well or waits to be sent again, what it attempted on its own
   *     among it
   */
  public boolean succeeds(Work work) {
    int before = failures;
    attempt(work);
    return failures == before;
  }

  /**
   * What a press, a key or finished work leads to: a logbook that cannot be written is told in its
   * sentence, whoever writes. All else that fails is no one's to expect.
   */
  void guard(Runnable deed) {
    try {
      deed.run();
    } catch (UnsentException e) {
      keep(deed::run, e);
    } catch (LogbookException e) {
      fail(sentence(e));
    }
  }

  /**
   * Does something that may fail with a plain sentence, then draws the screen once as things are
   * now; one that the deed led to stands drawn already.
   *
   * @return whether it went well
   */
  public boolean perform(Work work) {
    Screen before = navigator().current();
    boolean well = attempt(work);
    if (navigator().isUp(before)) {
      navigator().changed();
    }
    return well;
  }

  /**
   * Does something slow away from the window's thread, then hands over what came of it; a failure
   * is shown.
   */
  public <T> void background(Callable<T> work, Consumer<T> done) {
    workers.execute(
        () -> {
          try {
            T result = work.call();
            Platform.runLater(() -> guard(() -> done.accept(result)));
          } catch (IOException
              | UncheckedIOException
              | LogbookException
              | IllegalArgumentException e) {
            Platform.runLater(() -> say(sentence(e)));
          } catch (Throwable e) {
            // Nobody waits for this thread: what is not told and logged here is lost.
            Platform.runLater(() -> unexpected("Work in the background failed", e));
          }
        });
  }

  /**
   * Does long work away from the window's thread, with a bar, a count and a key that stops it
   * beside the window once it takes a while; then hands over what came of it.
   *
   * @param title what is done, such as {@code Reading pictures}
   * @param work tells how far it is by {@link Progress}
   */
  public <T> void longWork(String title, Callable<T> work, Consumer<T> done) {
    longWork(title, work, done, () -> {});
  }

  /**
   * The same for a screen that waits for it.
   *
   * @param over is run first when it ends, whether it went well, failed or was stopped
   */
  public <T> void longWork(String title, Callable<T> work, Consumer<T> done, Runnable over) {
    LongWork watched = works.of(title);
    Consumer<Runnable> ends = then -> LongWorks.onWindow(() -> end(watched, over, then));
    workers.execute(
        () -> {
          try {
            T result = Progress.watched(watched, work);
            ends.accept(() -> guard(() -> done.accept(result)));
          } catch (CancellationException e) {
            ends.accept(() -> say(watched.stoppedWords()));
          } catch (IOException
              | UncheckedIOException
              | LogbookException
              | IllegalArgumentException e) {
            ends.accept(() -> say(sentence(e)));
          } catch (Throwable e) {
            ends.accept(() -> unexpected(title + " failed", e));
          }
        });
    works.follow(watched);
  }

  private void end(LongWork work, Runnable over, Runnable then) {
    works.end(work);
    over.run();
    then.run();
  }

  /** Held by whoever has a camera open. */
  public Lock cameraTurn() {
    return cameraTurn;
  }

  /**
   * Does something with the camera away from the window's thread, as taking a photograph; the live
   * picture waits meanwhile.
   */
  public <T> void withCamera(Callable<T> work, Consumer<T> done) {
    front.lendCamera(true);
    background(
        () -> {
          cameraTurn.lock();
          try {
            return work.call();
          } finally {
            cameraTurn.unlock();
            Platform.runLater(() -> front.lendCamera(false));
          }
        },
        done);
  }

  /** Logs what should not happen, and tells the person of it. */
  public void unexpected(String where, Throwable fault) {
    LOGGER.log(Level.SEVERE, where, fault);
    say(
        "Something went wrong in Wherefrom that should not. What was scanned is safe. It is logged:"
            + " Settings, Save a report.");
  }

  private static String sentence(Exception e) {
    String message = e.getMessage();
    return message == null ? "That did not work: " + e.getClass().getSimpleName() + "." : message;
  }
}
