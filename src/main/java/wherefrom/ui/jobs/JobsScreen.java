package wherefrom.ui.jobs;

import javafx.scene.layout.Region;
import wherefrom.job.Shelf;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Pager;

/** The jobs of the workshop, the one last worked on first. */
public final class JobsScreen implements Screen {
  private final Desk desk;
  private final Pager<Shelf.Entry> list;

  public JobsScreen(Desk desk) {
    this.desk = desk;
    list =
        Pager.list(
            desk.touch(),
            entry ->
                desk.touch()
                    .key(
                        entry.name(),
                        () -> desk.attempt(() -> desk.open(desk.shelf().open(entry.folder())))));
  }

  @Override
  public String title() {
    return "Jobs";
  }

  @Override
  public Region view() {
    return list;
  }

  @Override
  public void shown() {
    list.setItems(desk.shelf().list());
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
