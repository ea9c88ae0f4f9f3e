package wherefrom.ui.jobs;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.demo.DemoJob;
import wherefrom.files.ExportedJobs;
import wherefrom.job.shelf.Shelf;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagCode;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagPlate;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.files.FilesScreen;
import wherefrom.ui.home.HomeScan;

/** The jobs of the workshop, each a tag, the one last worked on first. */
public final class JobsScreen implements Screen, Scannable {
  /** What stands in the place of messages when the demo has opened. */
  public static final String TRY = "Try it: press the red tag and see why it stopped.";

  /** The last and the one before it; with large letters, which have no drawing, more. */
  private static final int SHOWN = 2;

  private static final int SHOWN_LARGE = 4;

  private final ScreenContext context;
  private final JobsModel model;
  private final StackPane view = Panes.grow(new StackPane());
  private List<JobsModel.Line> jobs = List.of();
  private int asked;
  private boolean read;
  private Optional<Scanned> early = Optional.empty();

  public JobsScreen(ScreenContext context) {
    this.context = context;
    model = new JobsModel(context.services().clock(), context.copying()::words);
  }

  private Tiles keys() {
    Touch touch = context.touch();
    List<TouchKey> keys = new ArrayList<>();
    if (!jobs.isEmpty()) {
      keys.add(touch.key("New job", this::newJob));
    }
    if (touch.isLarge()) {
      keys.add(touch.key("More", this::more));
    } else {
      others().forEach(other -> keys.add(touch.key(other.words(), other.value())));
    }
    return Tiles.row(context.scale(), keys.toArray(Node[]::new));
  }

  private List<Choice<Runnable>> others() {
    List<Choice<Runnable>> others = new ArrayList<>();
    others.add(new Choice<>(this::demo, "Open the demo", "an invented job to try it on"));
    others.add(new Choice<>(this::bringBack, "Import a job", "a copy from a USB drive"));
    if (jobs.size() > (context.touch().isLarge() ? 1 : SHOWN)) {
      others.add(new Choice<>(this::all, "All jobs", "where each was left"));
    }
    others.add(
        new Choice<>(
            () -> context.navigator().show(ScreenId.SETTINGS), "Settings", "text, look, scanner"));
    return others;
  }

  /** Large text leaves room for two keys: the others stand on a page of their own. */
  private void more() {
    context.navigator().open(() -> new ChoiceScreen<>(context, "More", others(), Runnable::run));
  }

  private void newJob() {
    context.navigator().show(ScreenId.NEW_JOB);
  }

  private void all() {
    context.navigator().open(() -> new JobListScreen(context, jobs, this::open));
  }

  private void open(Path folder) {
    context.attempt(() -> context.open(folder));
  }

  private void demo() {
    Path shop = context.settings().shop();
    context.longWork(
        "Copying the demo", context.writings().of(() -> DemoJob.on(shop)), this::openDemo);
  }

  private void openDemo(Path folder) {
    if (context.attempt(() -> context.open(folder))) {
      context.say(TRY);
    }
  }

  private void bringBack() {
    context
        .navigator()
        .open(() -> FilesScreen.file(context, "Import a job", ExportedJobs.ENDINGS, this::restore));
  }

  private void restore(Path file) {
    new BringingBack(context).all(List.of(file));
  }

  @Override
  public String title() {
    return jobs.isEmpty() ? "Wherefrom" : "Jobs";
  }

  @Override
  public String aside() {
    return "";
  }

  /** How the copy of the last job stands; what is wrong with it has one line of large letters. */
  private String copy(JobsModel.Line last) {
    String words = context.copying().words(last.folder(), last.sequence()).orElse("");
    boolean troubled = context.copying().isTroubled(last.folder(), last.sequence());
    return troubled ? context.touch().brief(words, context.copying().brief()) : words;
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    int number = ++asked;
    Shelf shelf = context.shelf();
    context.longWork("Reading the list of jobs", shelf::list, found -> show(number, found));
  }

  /** Shows the list that was asked for last. */
  private void show(int number, List<Shelf.Entry> found) {
    if (number != asked) {
      return;
    }
    jobs = model.lines(found);
    read = true;
    if (jobs.isEmpty()) {
      view.getChildren().setAll(new NoJobsView(context.touch(), this::newJob, keys()));
    } else {
      JobsView tags = new JobsView(context.touch(), keys(), copy(jobs.get(0)));
      tags.show(tags());
      view.getChildren().setAll(tags);
    }
    if (context.navigator().isUp(this)) {
      context.navigator().changed();
    }
    Optional<Scanned> waited = early;
    early = Optional.empty();
    waited.filter(it -> context.navigator().current() == this).ifPresent(this::late);
  }

  private List<TagPlate> tags() {
    int most = context.touch().isLarge() ? SHOWN_LARGE : SHOWN;
    List<TagPlate> tags = new ArrayList<>();
    for (JobsModel.Line job : jobs.subList(0, Math.min(most, jobs.size()))) {
      String spoken = String.join(", ", job.name(), job.sofar(), job.when());
      TagPlate tag =
          new TagPlate(context.scale(), new JobFace(context.touch(), job), tags.isEmpty(), spoken);
      tags.add(context.touch().target(tag, () -> open(job.folder())));
    }
    return tags;
  }

  /** The list is read: nothing is kept any more, and the tag gets its answer. */
  private void late(Scanned scanned) {
    context.superseded();
    scan(scanned);
  }

  /** A part's tag opens its page, in its job; what is scanned too early is answered later. */
  @Override
  public void scan(Scanned scanned) {
    if (!read) {
      early = Optional.of(scanned);
      context.say("Still reading the jobs. The tag is kept.");
      return;
    }
    scanned.tag().ifPresentOrElse(this::take, () -> unknown(scanned.text()));
  }

  /** What is no tag of any job is answered as within one; six figures open none by themselves. */
  private void unknown(String text) {
    TagBook.findForeign(text).ifPresentOrElse(it -> context.refuse(it, ""), () -> typed(text));
  }

  private void typed(String text) {
    List<String> fits = context.shelf().listTyped(text.replaceAll("\\s", ""), -1);
    context.say(
        fits.isEmpty()
            ? "No job here has this tag. Scan it, or open its job first."
            : "A tag of " + String.join(", or ", fits) + ". Open that job, then type it.");
  }

  private void take(TagCode code) {
    JobsModel.find(jobs, code.engine())
        .ifPresentOrElse(
            folder -> openAt(folder, code),
            () -> context.say("No job here has this tag. Import its job, or begin a new one."));
  }

  private void openAt(Path folder, TagCode code) {
    if (context.attempt(() -> context.open(folder))) {
      HomeScan.take(context, Scanned.of(context, code));
    }
  }

  @Override
  public void copied() {
    shown();
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
