package wherefrom.ui.photos;

import java.util.List;
import java.util.Optional;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import wherefrom.inspection.Subject;
import wherefrom.job.photos.Photograph;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;

/** The photographs of a part, of a place that carries no tag, or of the whole engine. */
public final class PhotosScreen implements Screen {
  private final Desk desk;
  private final Optional<Subject> subject;
  private final String title;
  private final PhotoLoader loader;
  private final FitText none;
  private final Pager<HBox> rows;
  private final Region view;

  private PhotosScreen(Desk desk, Optional<Subject> subject, String title) {
    this.desk = desk;
    this.subject = subject;
    this.title = title;
    loader = new PhotoLoader(desk);
    none = desk.touch().text("There is no photograph yet.");
    none.managedProperty().bind(none.visibleProperty());
    rows = Pager.list(desk.touch(), row -> row);
    view =
        Panes.column(
            desk.scale(),
            none,
            rows,
            Tiles.row(
                desk.scale(),
                desk.touch().primary(desk.touch().brief("Add a photograph", "Add"), this::add),
                desk.touch()
                    .key(
                        desk.touch().brief("Read a folder…", "Folder…"),
                        () -> FolderReading.ask(desk))));
  }

  /** Those of one part or place. */
  public static PhotosScreen of(Desk desk, Subject subject, String title) {
    return new PhotosScreen(desk, Optional.of(subject), title);
  }

  /** Every photograph of the job; what is added here shows the whole engine. */
  public static PhotosScreen ofAll(Desk desk) {
    return new PhotosScreen(desk, Optional.empty(), "All photographs");
  }

  private List<Photograph> photos() {
    return subject
        .map(of -> Photograph.listOf(desk.state(), of))
        .orElseGet(() -> Photograph.listAll(desk.state()));
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    none.setVisible(photos().isEmpty());
    rows.refill(PhotoStrip.rows(desk, loader, this::photos, PhotoStrip.across(desk)));
  }

  @Override
  public void changed() {
    shown();
  }

  private void add() {
    PhotoTaking.ask(desk, subject, "");
  }
}
