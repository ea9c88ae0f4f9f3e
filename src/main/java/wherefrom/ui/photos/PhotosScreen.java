package wherefrom.ui.photos;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import wherefrom.inspection.Subject;
import wherefrom.job.photos.Photograph;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TakesPictures;
import wherefrom.ui.controls.Either;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;

/** The photographs of a part, of a place that carries no tag, or of the whole engine. */
public final class PhotosScreen extends Page implements TakesPictures {
  private final Optional<Subject> subject;
  private final PhotoLoader loader;
  private final FitText none;
  private final Pager<HBox> rows;
  private int across;

  private PhotosScreen(ScreenContext context, Optional<Subject> subject, String title) {
    super(context, title);
    this.subject = subject;
    loader = new PhotoLoader(context);
    none = context.touch().text("No photograph yet. Add one, or read a folder of them.");
    none.managedProperty().bind(none.visibleProperty());
    rows = Pager.list(context.touch(), row -> row);
    across = PhotoStrip.across(context);
    Region strips = new Either(room -> spread(room.width())).needing(rows);
    Region view = Panes.column(context.scale(), none, strips, foot());
    lay(view);
  }

  private Foot foot() {
    TagKey add = tag(this::add);
    add.setWords(touch().brief("Add a photograph", "Add photo"), "");
    String folder = touch().brief("Read a folder…", "Read folder…");
    return new Foot(
        context, add, KeyRow.of(context, act(folder, () -> FolderReading.ask(context, subject))));
  }

  /** Those of one part or place. */
  public static PhotosScreen of(ScreenContext context, Subject subject, String title) {
    return new PhotosScreen(context, Optional.of(subject), title);
  }

  /** Every photograph of the job; what is added here shows the whole engine. */
  public static PhotosScreen ofAll(ScreenContext context) {
    return new PhotosScreen(context, Optional.empty(), "All photographs");
  }

  private List<Photograph> photos() {
    return subject
        .map(of -> Photograph.listOf(context.state(), of))
        .orElseGet(() -> Photograph.listAll(context.state()));
  }

  @Override
  protected void refresh() {
    none.setVisible(photos().isEmpty());
    rows.refill(PhotoStrip.rows(context, loader, this::photos, across));
  }

  /** As many beside each other as the glass is wide for. */
  private Region spread(double width) {
    // Large letters have the keys that turn the list below it.
    double beside = touch().isLarge() ? width : width - rows.turningWidth();
    int fitting = PhotoStrip.fitting(context, beside);
    if (fitting != across) {
      across = fitting;
      refresh();
    }
    return rows;
  }

  @Override
  public void pictures(List<Path> files) {
    FolderReading.read(context, subject, files);
  }

  private void add() {
    PhotoTaking.ask(context, subject, "");
  }
}
