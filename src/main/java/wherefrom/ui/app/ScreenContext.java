package wherefrom.ui.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Dimension2D;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.ports.Services;
import wherefrom.job.settings.Settings;
import wherefrom.job.shelf.Shelf;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagCode;
import wherefrom.rules.Cue;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.ScreenAnswer;
import wherefrom.ui.controls.Touch;

/**
 * What every screen works with: the services, the open job, the settings, the way to other screens.
 * Used on the window's thread only, but for {@link #background}.
 */
public final class ScreenContext extends WindowWork {

  private final Services services;
  private final LongSupplier nanos;
  private final VerdictSounds sounds;
  private final WindowFrame front;
  private final Navigator navigator;
  private Settings settings;
  private final GlassLetters letters;
  private Supplier<Dimension2D> corner = () -> new Dimension2D(0, 0);
  private final Kept kept = new Kept(() -> getJob().folder());
  private final List<Runnable> whenJobCloses = new ArrayList<>();
  private Optional<OpenJob> job = Optional.empty();

  /** What was said of the open job's logbook. */
  private String noticed = "";

  private final Copying copying;
  private final Writings writings = new Writings();

  ScreenContext(
      Services services,
      LongSupplier nanos,
      VerdictSounds sounds,
      Executor workers,
      WindowFrame front,
      Navigator navigator,
      Settings settings) {
    super(front, nanos, workers);
    this.services = services;
    this.nanos = nanos;
    this.sounds = sounds;
    this.front = front;
    this.navigator = navigator;
    this.settings = settings;
    this.letters = new GlassLetters(Scale.of(settings), nanos, front);
    this.copying = new Copying(this, works(), workers, front::copied);
  }

  /** The copies of jobs in a second folder. */
  public Copying copying() {
    return copying;
  }

  /** What screens keep while the window is open. */
  public Kept kept() {
    return kept;
  }

  /** What is being written away from the window's thread. */
  public Writings writings() {
    return writings;
  }

  public Services services() {
    return services;
  }

  @Override
  public Navigator navigator() {
    return navigator;
  }

  public Touch touch() {
    return letters.touch();
  }

  /** The letters of the screen that is made next. */
  GlassLetters letters() {
    return letters;
  }

  public Scale scale() {
    return touch().scale();
  }

  /** A steady clock, in nanoseconds. */
  public LongSupplier nanos() {
    return nanos;
  }

  @Override
  public VerdictSounds sounds() {
    return settings.sound() ? sounds : VerdictSounds.NONE;
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
    attempt(() -> services.settings().save(changed));
    front.look();
    if (rescaled) {
      letters.set(Scale.of(changed));
      front.rescale();
    }
  }

  public Shelf shelf() {
    return services.shelves().apply(settings.shop());
  }

  @Override
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
    opened.watch(() -> Platform.runLater(() -> heard(opened)));
    noticed = "";
    notice(opened);
    navigator.home();
  }

  /**
   * Says how the job's logbook is where that was not said.
   *
   * @return whether it has changed since it was said
   */
  private boolean notice(OpenJob open) {
    String condition = open.condition().sentence();
    boolean changed = !condition.equals(noticed);
    noticed = condition;
    if (changed && !condition.isEmpty()) {
      say(condition);
    }
    return changed;
  }

  /** Another bench has written, the shared server is back, or what it holds cannot be read. */
  private void heard(OpenJob from) {
    if (job.filter(open -> open == from).isPresent()) {
      sendAgain(from);
      boolean came = from.catchUp();
      if (notice(from) || came) {
        navigator.changed();
      }
    }
  }

  /** Puts the job in a folder on the bench; one that lies there already stays as it is. */
  public void open(Path folder) throws IOException {
    boolean here = job.filter(open -> open.condition().writable()).isPresent();
    if (here && Files.isSameFile(getJob().folder(), folder)) {
      navigator.home();
    } else {
      open(shelf().open(folder));
    }
  }

  /** Does this each time before a job is put away. */
  public void whenJobCloses(Runnable deed) {
    whenJobCloses.add(deed);
  }

  /** Puts the open job away. */
  public void closeJob() {
    sounds.hush();
    whenJobCloses.forEach(Runnable::run);
    job.ifPresent(this::leave);
    Optional<Path> left = job.map(OpenJob::folder);
    job.ifPresent(OpenJob::close);
    job = Optional.empty();
    front.jobChanged();
    left.ifPresent(copying::left);
  }

  /** Every tag that can be in view: those of the open job, and the cards; none without a job. */
  public List<TagCode> issued() {
    return job.map(open -> new TagBook(open.state(), shelf()).issued()).orElseGet(List::of);
  }

  /** Tells the person something in a sentence that stays until it is put away. */
  @Override
  public void say(String sentence) {
    front.say(sentence);
  }

  /** Something else is scanned, or stands there: what was said before is not about it. */
  public void superseded() {
    front.superseded();
  }

  /**
   * A code that the screen cannot take is answered over the whole screen, so that nothing on it can
   * be taken for the answer. The tag of a bag or a big part opens its page.
   *
   * @param wanted what is to be scanned here, in a sentence, where the code is one of ours
   */
  public void refuse(CodeLookup found, String wanted) {
    Runnable said = () -> refuse(Refusal.of(found, wanted));
    found
        .<Runnable>match(
            part -> said,
            spot -> said,
            action -> said,
            basket -> said,
            bag -> () -> navigator.show(ScreenId.BAG, bag.number()),
            bigPart -> () -> navigator.show(ScreenId.BIG_PART, bigPart.part().number()),
            refused -> said)
        .run();
  }

  /** Says over the whole screen that what was scanned or tapped was not taken, and why. */
  public void refuse(String headline, String why) {
    refuse(ScreenAnswer.said(headline, why).withCue(Cue.ASK));
  }

  void refuse(ScreenAnswer answer) {
    front.refuse(answer);
  }

  /** Takes the last step of the job back and says which it was. */
  public void takeBack() {
    attempt(() -> say(getJob().undo().sentence()));
    navigator.changed();
  }

  /**
   * What UNDO takes of a lower corner where a screen takes the whole glass, in pixels. The rail may
   * have larger letters than the screen beside it.
   */
  public Dimension2D corner() {
    return corner.get();
  }

  /** Says whose key UNDO is now. */
  void corner(Rail rail) {
    corner = rail::corner;
  }

  /** Whether the next scan is the card that teaches the scanner's digits. */
  public void expectSetUpCard(boolean expected) {
    front.expectSetUpCard(expected);
  }

  /** The scanner's settings were changed by hand. */
  public void scannerChanged() {
    front.scannerChanged();
  }
}
