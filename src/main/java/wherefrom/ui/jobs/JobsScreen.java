package wherefrom.ui.jobs;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.demo.DemoJob;
import wherefrom.files.ExportedJobs;
import wherefrom.job.shelf.Shelf;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.files.FilesScreen;

/** The jobs of the workshop, the one last worked on first. */
public final class JobsScreen implements Screen {
  private static final double KEYS_MM = 62;

  private final Desk desk;
  private final JobsModel model;
  private final Pager<JobsModel.Line> list;
  private final FitText none;
  private final HBox view;
  private int asked;

  public JobsScreen(Desk desk) {
    this.desk = desk;
    Touch touch = desk.touch();
    model = new JobsModel(desk.equipment().clock(), desk.copying()::words);
    list = Pager.list(touch, this::row);
    none = touch.text("No jobs yet. Begin a new job, or look round in the demo first.");
    none.setVisible(false);
    StackPane room = Panes.grow(new StackPane(list, none));
    Tiles keys =
        Tiles.of(
            desk.scale(),
            1,
            touch.primary("New job", () -> desk.navigator().show(ScreenId.NEW_JOB)),
            touch.primary("Open the demo", this::demo),
            touch.key("Bring a job back", this::bringBack),
            touch.key("Settings", () -> desk.navigator().show(ScreenId.SETTINGS)));
    Panes.wide(
        keys, Math.max(KEYS_MM, keys.minWidth(-1) / desk.scale().pixelsPerMm()), desk.scale());
    view = Panes.row(desk.scale(), room, keys);
  }

  private Region row(JobsModel.Line line) {
    return ListRow.key(desk.touch(), line.name(), line.lines(), () -> open(line.folder()));
  }

  private void open(Path folder) {
    desk.attempt(() -> desk.open(folder));
  }

  private void demo() {
    Path shop = desk.settings().shop();
    desk.longWork("Copying the demo", () -> DemoJob.on(shop), this::open);
  }

  private void bringBack() {
    desk.navigator()
        .open(
            () -> FilesScreen.file(desk, "Bring a job back", ExportedJobs.ENDINGS, this::restore));
  }

  private void restore(Path file) {
    new BringingBack(desk).all(List.of(file));
  }

  @Override
  public String title() {
    return "Jobs";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    int number = ++asked;
    Shelf shelf = desk.shelf();
    desk.longWork("Reading the list of jobs", shelf::list, jobs -> show(number, jobs));
  }

  /** Shows the list that was asked for last. */
  private void show(int number, List<Shelf.Entry> jobs) {
    if (number == asked) {
      list.setItems(model.lines(jobs));
      none.setVisible(jobs.isEmpty());
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
