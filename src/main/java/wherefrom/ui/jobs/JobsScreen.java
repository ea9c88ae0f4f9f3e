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
import wherefrom.parts.Action;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
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

  private static final int SHOWN = 2;

  private final Desk desk;
  private final JobsModel model;
  private final StackPane view = Panes.grow(new StackPane());
  private List<JobsModel.Line> jobs = List.of();
  private int asked;

  public JobsScreen(Desk desk) {
    this.desk = desk;
    model = new JobsModel(desk.equipment().clock(), desk.copying()::words);
  }

  private Tiles keys() {
    Touch touch = desk.touch();
    List<TouchKey> keys = new ArrayList<>();
    if (!jobs.isEmpty()) {
      keys.add(touch.key("New job", this::newJob));
    }
    if (touch.isLarge()) {
      keys.add(touch.key("More", this::more));
    } else {
      others().forEach(other -> keys.add(touch.key(other.words(), other.value())));
    }
    return Tiles.row(desk.scale(), keys.toArray(Node[]::new));
  }

  private List<Choice<Runnable>> others() {
    List<Choice<Runnable>> others = new ArrayList<>();
    others.add(new Choice<>(this::demo, "Open the demo", "an invented job to try it on"));
    others.add(new Choice<>(this::bringBack, "Import a job", "a copy from a USB drive"));
    if (jobs.size() > (desk.touch().isLarge() ? 1 : SHOWN)) {
      others.add(new Choice<>(this::all, "All jobs", "where each was left"));
    }
    others.add(
        new Choice<>(
            () -> desk.navigator().show(ScreenId.SETTINGS), "Settings", "text, look, scanner"));
    return others;
  }

  /** Large text leaves room for two keys: the others stand on a page of their own. */
  private void more() {
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "More", others(), Runnable::run));
  }

  private void newJob() {
    desk.navigator().show(ScreenId.NEW_JOB);
  }

  private void all() {
    desk.navigator().open(() -> new JobListScreen(desk, jobs, this::open));
  }

  private void open(Path folder) {
    desk.attempt(() -> desk.open(folder));
  }

  private void demo() {
    Path shop = desk.settings().shop();
    desk.longWork("Copying the demo", () -> DemoJob.on(shop), this::openDemo);
  }

  private void openDemo(Path folder) {
    if (desk.attempt(() -> desk.open(folder))) {
      desk.say(TRY);
    }
  }

  private void bringBack() {
    desk.navigator()
        .open(() -> FilesScreen.file(desk, "Import a job", ExportedJobs.ENDINGS, this::restore));
  }

  private void restore(Path file) {
    new BringingBack(desk).all(List.of(file));
  }

  @Override
  public String title() {
    return jobs.isEmpty() ? "Wherefrom" : "Jobs";
  }

  @Override
  public String aside() {
    return "";
  }

  /** How the copy of the last job stands. */
  private String copy(JobsModel.Line last) {
    return desk.copying().words(last.folder(), last.sequence()).orElse("");
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    int number = ++asked;
    Shelf shelf = desk.shelf();
    desk.longWork("Reading the list of jobs", shelf::list, found -> show(number, found));
  }

  /** Shows the list that was asked for last. */
  private void show(int number, List<Shelf.Entry> found) {
    if (number != asked) {
      return;
    }
    jobs = model.lines(found);
    if (jobs.isEmpty()) {
      view.getChildren().setAll(new NoJobsView(desk.touch(), this::newJob, keys()));
    } else {
      JobsView tags = new JobsView(desk.touch(), keys(), copy(jobs.get(0)));
      tags.show(tags());
      view.getChildren().setAll(tags);
    }
    desk.navigator().changed();
  }

  private List<TagPlate> tags() {
    List<TagPlate> tags = new ArrayList<>();
    for (JobsModel.Line job : jobs.subList(0, Math.min(SHOWN, jobs.size()))) {
      String spoken = String.join(", ", job.name(), job.sofar(), job.when());
      TagPlate tag =
          new TagPlate(desk.scale(), new JobFace(desk.touch(), job), tags.isEmpty(), spoken);
      tags.add(desk.touch().target(tag, () -> open(job.folder())));
    }
    return tags;
  }

  /** A part's tag opens its page, in its job. */
  @Override
  public void scan(String text) {
    Optional<TagCode> code = TagCode.find(text.replaceAll("\\s", ""));
    if (code.isEmpty()) {
      desk.say("This is none of our tags whole. Scan the tag, or open its job first.");
      return;
    }
    if (code.get().type() == TagType.ACTION_CARD) {
      act(Action.find(code.get().item()));
      return;
    }
    JobsModel.find(jobs, code.get().engine())
        .ifPresentOrElse(
            folder -> openAt(folder, text),
            () -> desk.say("No job here has this tag. Import its job, or begin a new one."));
  }

  private void openAt(Path folder, String text) {
    if (desk.attempt(() -> desk.open(folder))) {
      HomeScan.take(desk, text, () -> {});
    }
  }

  private void act(Optional<Action> card) {
    boolean goesOn = card.filter(act -> act == Action.NEXT || act == Action.YES).isPresent();
    if (goesOn && !jobs.isEmpty()) {
      open(jobs.get(0).folder());
    } else {
      desk.say("Press a job's tag, or scan any part of it.");
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
