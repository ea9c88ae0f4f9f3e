package wherefrom.ui.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.geometry.Dimension2D;
import wherefrom.files.Progress;
import wherefrom.job.EngineJob;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.ports.Equipment;
import wherefrom.job.settings.Settings;
import wherefrom.job.shelf.Shelf;
import wherefrom.job.tags.Found;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagCode;
import wherefrom.ui.controls.Answer;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/**
 * What every screen works with: the equipment, the open job, the settings, the way to other
 * screens. Used on the window's thread only, but for {@link #background}.
 */
public final class Desk {

  /** Work that may fail with a sentence for the person. */
  @FunctionalInterface
  public interface Work {
    void run() throws IOException;
  }

  private static final Logger LOGGER = Logger.getLogger("wherefrom");

  private final Equipment equipment;
  private final LongSupplier nanos;
  private final Sounds sounds;
  private final Executor workers;
  private final Front front;
  private final Lock cameraTurn = new ReentrantLock();
  private Settings settings;
  private Touch touch;
  private final Map<Class<?>, Object> kept = new HashMap<>();
  private Optional<OpenJob> job = Optional.empty();
  private final Copying copying;
  private final LongWorks works;

  Desk(
      Equipment equipment,
      LongSupplier nanos,
      Sounds sounds,
      Executor workers,
      Front front,
      Settings settings) {
    this.equipment = equipment;
    this.nanos = nanos;
    this.sounds = sounds;
    this.workers = workers;
    this.front = front;
    this.settings = settings;
    this.touch = new Touch(Scale.of(settings), nanos);
    this.works = new LongWorks(front, nanos);
    this.copying = new Copying(this, works, workers, front::copied);
  }

  /** The copies of jobs in a second folder. */
  public Copying copying() {
    return copying;
  }

  /**
   * What a screen keeps while the window is open, so that it outlives Back: one thing of each kind.
   *
   * @param fresh makes it where there is none yet
   */
  public <T> T keep(Class<T> kind, Supplier<T> fresh) {
    return kind.cast(kept.computeIfAbsent(kind, missing -> fresh.get()));
  }

  /** Lets go of what was kept. */
  public void drop(Class<?> kind) {
    kept.remove(kind);
  }

  public Equipment equipment() {
    return equipment;
  }

  public Navigator navigator() {
    return front;
  }

  public Touch touch() {
    return touch;
  }

  /** Letters of another size, for a screen that has no room for those that are set. */
  void letters(double factor) {
    if (factor != touch.scale().textFactor()) {
      touch = touch.withText(factor);
    }
  }

  public Scale scale() {
    return touch.scale();
  }

  /** A steady clock, in nanoseconds. */
  public LongSupplier nanos() {
    return nanos;
  }

  /** The sounds, or none where the person has turned them off. */
  public Sounds sounds() {
    return settings.sound() ? sounds : Sounds.NONE;
  }

  public Settings settings() {
    return settings;
  }

  /** Keeps changed settings; where they cannot be kept they count until the program ends. */
  public void change(Settings changed) {
    boolean rescaled = !Scale.of(changed).equals(Scale.of(settings));
    if (!changed.sound()) {
      sounds.hush();
    }
    settings = changed;
    attempt(() -> equipment.settings().save(changed));
    front.look();
    if (rescaled) {
      touch = new Touch(Scale.of(changed), nanos);
      front.rescale();
    }
  }

  public Shelf shelf() {
    return equipment.shelves().apply(settings.shop());
  }

  public Optional<OpenJob> job() {
    return job;
  }

  /** The open job; only screens that work on a job may ask. */
  public OpenJob getJob() {
    return job.orElseThrow(() -> new IllegalStateException("no job is open"));
  }

  public EngineJob state() {
    return getJob().state();
  }

  /** Puts a job on the bench, in place of the one before. */
  public void open(OpenJob opened) {
    closeJob();
    job = Optional.of(opened);
    String condition = opened.condition().sentence();
    if (!condition.isEmpty()) {
      say(condition);
    }
    front.home();
  }

  /** Puts the job in a folder on the bench; one that lies there already stays as it is. */
  public void open(Path folder) throws IOException {
    boolean here = job.filter(open -> open.condition().writable()).isPresent();
    if (here && Files.isSameFile(getJob().folder(), folder)) {
      front.home();
    } else {
      open(shelf().open(folder));
    }
  }

  /** Puts the open job away. */
  public void closeJob() {
    sounds.hush();
    Optional<Path> left = job.map(OpenJob::folder);
    job.ifPresent(OpenJob::close);
    job = Optional.empty();
    left.ifPresent(copying::left);
  }

  /** Every tag that can be in view: those of the open job, and the cards; none without a job. */
  public List<TagCode> issued() {
    return job.map(open -> new TagBook(open.state(), shelf()).issued()).orElseGet(List::of);
  }

  /** Tells the person something in a sentence that stays until it is put away. */
  public void say(String sentence) {
    front.say(sentence);
  }

  /** Something else is scanned: what was said before is not about it. */
  void superseded() {
    front.superseded();
  }

  /**
   * A code that the screen cannot take is answered over the whole screen, so that nothing on it can
   * be taken for the answer.
   *
   * @param wanted what is to be scanned here, in a sentence, where the code is one of ours
   */
  public void refuse(Found found, String wanted) {
    refuse(Refusal.of(found, wanted));
  }

  void refuse(Answer answer) {
    front.refuse(answer);
  }

  /**
   * Does something that may fail with a plain sentence, and shows the sentence where it does.
   *
   * @return whether it went well
   */
  public boolean attempt(Work work) {
    try {
      work.run();
      return true;
    } catch (IOException | LogbookException | IllegalArgumentException e) {
      say(sentence(e));
      return false;
    }
  }

  /** Takes the last step of the job back and says which it was. */
  public void takeBack() {
    attempt(() -> say(getJob().undo().sentence()));
    front.changed();
  }

  /** What UNDO takes of a lower corner where a screen takes the whole glass, in pixels. */
  public Dimension2D corner() {
    Rail rail = new Rail(touch, () -> {}, rest -> {});
    return new Dimension2D(rail.wide(), rail.high());
  }

  /** The next scan is the card that teaches the scanner's digits. */
  public void expectSetUpCard() {
    front.expectSetUpCard();
  }

  /** The scanner's settings were changed by hand. */
  public void scannerChanged() {
    front.scannerChanged();
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
            Platform.runLater(() -> done.accept(result));
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
    LongWork watched = works.of(title);
    workers.execute(
        () -> {
          try {
            T result = Progress.watched(watched, work);
            ended(watched, () -> done.accept(result));
          } catch (CancellationException e) {
            ended(watched, () -> say(watched.stoppedWords()));
          } catch (IOException
              | UncheckedIOException
              | LogbookException
              | IllegalArgumentException e) {
            ended(watched, () -> say(sentence(e)));
          } catch (Throwable e) {
            ended(watched, () -> unexpected(title + " failed", e));
          }
        });
    works.follow(watched);
  }

  private void ended(LongWork work, Runnable then) {
    LongWorks.onWindow(
        () -> {
          works.end(work);
          then.run();
        });
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
