package wherefrom.ui.part;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.photos.PhotoLoader;
import wherefrom.ui.photos.PhotoStrip;

/** All that is known of a part, as a list: tag, photographs, looks, readings, notes, history. */
public final class PartDetailsScreen extends Page {
  private final PartModel model;
  private final PhotoLoader loader;
  private final Pager<Supplier<Region>> lines;

  PartDetailsScreen(ScreenContext context, PartModel model, PhotoLoader loader) {
    super(context, "");
    this.model = model;
    this.loader = loader;
    lines = Pager.list(context.touch(), Supplier::get);
    lay(lines);
  }

  /** The list, as things stand now. */
  private void refill() {
    List<Supplier<Region>> rows = new ArrayList<>();
    model.first().forEach(line -> rows.add(() -> row(line)));
    PhotoStrip.rows(context, loader, model::photos, PhotoStrip.across(context))
        .forEach(strip -> rows.add(() -> strip));
    model.more().forEach(line -> rows.add(() -> row(line)));
    lines.refill(rows);
  }

  private ListRow row(PartModel.Line line) {
    return ListRow.plain(context.touch(), line.heading(), List.of(line.words()));
  }

  @Override
  public String title() {
    return model.title();
  }

  @Override
  public Object identity() {
    return model.part().item();
  }

  @Override
  protected void refresh() {
    refill();
  }
}
