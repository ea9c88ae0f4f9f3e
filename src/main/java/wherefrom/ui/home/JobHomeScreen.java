package wherefrom.ui.home;

import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.files.ExportedJobs;
import wherefrom.files.FileNames;
import wherefrom.job.OpenJob;
import wherefrom.job.ports.Damage;
import wherefrom.ui.app.Copying;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.files.DriveFolder;

/** Where the job was left, and a key to each thing that can be done with it. */
public final class JobHomeScreen implements Screen {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss", Locale.ROOT);

  private final Desk desk;
  private final Pager<JobHomeModel.Line> lines;
  private final VBox view;

  public JobHomeScreen(Desk desk) {
    this.desk = desk;
    Touch touch = desk.touch();
    lines = Pager.list(touch, line -> ListRow.told(touch, line.heading(), line.words()));
    view =
        Panes.column(
            desk.scale(),
            lines,
            Tiles.of(
                desk.scale(),
                4,
                to("Print tags", ScreenId.PRINT_TAGS),
                to("Take apart", ScreenId.TAKE_APART),
                to("Bench map", ScreenId.BENCH_MAP),
                to("Put together", ScreenId.PUT_TOGETHER),
                to("Between the days", ScreenId.BETWEEN),
                touch.key("Copy to USB drive", this::export),
                touch.key("Settings", () -> desk.navigator().show(ScreenId.SETTINGS)),
                touch.key("Other jobs", () -> desk.navigator().jobs())));
  }

  private TouchKey to(String words, ScreenId id) {
    return desk.touch().primary(words, () -> desk.navigator().show(id));
  }

  private void export() {
    Path job = desk.getJob().folder();
    String stamp = STAMP.format(ZonedDateTime.now(desk.equipment().clock()));
    String name = FileNames.of(desk.state().name(), "job " + stamp, ExportedJobs.OURS);
    new DriveFolder(desk, "Where to copy the job to", job, folder -> export(job, folder, name))
        .ask();
  }

  private void export(Path job, Path folder, String name) {
    Path file = FileNames.beside(folder.resolve(name));
    desk.longWork(
        "Copying the job",
        () -> {
          desk.equipment().archives().export(job, file);
          return Damage.of(desk.equipment().checks(), job);
        },
        damage -> desk.say(copied(file, damage)));
  }

  /** A copy of a damaged job is not to be taken for a sound one. */
  private static String copied(Path file, List<String> damage) {
    return damage.isEmpty()
        ? "The whole job is copied to " + file + "."
        : "Copied to " + file + ", but the job is damaged. " + String.join(" ", damage);
  }

  @Override
  public String title() {
    return "Where you left off";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    OpenJob job = desk.getJob();
    List<JobHomeModel.Line> told = JobHomeModel.lines(job, desk.equipment().clock());
    Copying copying = desk.copying();
    long sequence = job.sequence();
    copying
        .words(job.folder(), sequence)
        .map(words -> new JobHomeModel.Line("Copy on the USB drive", words))
        .ifPresent(
            line -> told.add(copying.isTroubled(job.folder(), sequence) ? 1 : told.size(), line));
    lines.setItems(told);
  }

  @Override
  public void copied() {
    shown();
  }

  @Override
  public void changed() {
    shown();
  }
}
