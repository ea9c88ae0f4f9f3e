package wherefrom.ui.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.drawing.PlaceWords;
import wherefrom.parts.Place;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;

/** Some places of an index as a list, each with its part's shape and how it stands. */
public final class PlaceListScreen implements Screen, Scannable {
  private final Desk desk;
  private final EngineIndex index;
  private final String title;
  private final Supplier<List<Place>> places;
  private final FitText none;
  private final Pager<List<Place>> rows;
  private final VBox view;

  /**
   * @param empty what is said where there is none
   * @param places asked anew each time that it comes up
   */
  public PlaceListScreen(
      Desk desk, EngineIndex index, String title, String empty, Supplier<List<Place>> places) {
    this.desk = desk;
    this.index = index;
    this.title = title;
    this.places = places;
    none = desk.touch().text(empty);
    none.managedProperty().bind(none.visibleProperty());
    rows = Pager.list(desk.touch(), this::row);
    view = Panes.column(desk.scale(), none, rows);
  }

  private Region row(List<Place> pair) {
    List<Node> keys = new ArrayList<>();
    pair.forEach(place -> keys.add(key(place)));
    while (keys.size() < across()) {
      keys.add(new Region());
    }
    return Tiles.row(desk.scale(), keys.toArray(Node[]::new));
  }

  private Node key(Place place) {
    return PlaceRow.of(
        desk.touch(),
        desk.state().layout(),
        place,
        PlaceWords.of(desk.state().layout(), place),
        index.states().apply(place),
        () -> index.open(place));
  }

  private int across() {
    return desk.touch().isLarge() ? 1 : 2;
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
    List<Place> all = places.get();
    none.setVisible(all.isEmpty());
    List<List<Place>> lines = new ArrayList<>();
    for (int at = 0; at < all.size(); at += across()) {
      lines.add(all.subList(at, Math.min(all.size(), at + across())));
    }
    rows.refill(lines);
  }

  @Override
  public void changed() {
    shown();
  }

  @Override
  public void scan(String text) {
    index.scan(text);
  }
}
