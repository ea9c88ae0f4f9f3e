package wherefrom.ui.engine;

import java.util.List;
import java.util.function.Supplier;
import javafx.scene.layout.VBox;
import wherefrom.parts.Place;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;

/** Some places of an index as a list, each with its part's shape and how it stands. */
public final class PlaceListScreen extends Page implements Scannable {
  private final EngineIndex index;
  private final Supplier<List<Place>> places;
  private final FitText none;
  private final PlaceRows rows;
  private final VBox view;

  /**
   * @param empty what is said where there is none
   * @param places asked anew each time that it comes up
   */
  public PlaceListScreen(
      ScreenContext context,
      EngineIndex index,
      String title,
      String empty,
      Supplier<List<Place>> places) {
    super(context, title);
    this.index = index;
    this.places = places;
    none = context.touch().text(empty);
    none.managedProperty().bind(none.visibleProperty());
    rows = new PlaceRows(context, index);
    view = Panes.column(context.scale(), none, rows.view());
    lay(view);
  }

  @Override
  protected void refresh() {
    List<Place> all = places.get();
    none.setVisible(all.isEmpty());
    rows.show(all);
  }

  @Override
  public void scan(Scanned scanned) {
    index.scan(scanned);
  }
}
