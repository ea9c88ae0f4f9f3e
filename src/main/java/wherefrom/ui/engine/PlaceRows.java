package wherefrom.ui.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Tiles;

/** Places of an index as rows, two beside each other where words are not large. */
final class PlaceRows {
  private final ScreenContext context;
  private final EngineIndex index;
  private final Pager<List<Place>> rows;
  private Set<Place> marked = Set.of();

  PlaceRows(ScreenContext context, EngineIndex index) {
    this.context = context;
    this.index = index;
    rows = Pager.list(context.touch(), this::row);
  }

  Pager<List<Place>> view() {
    return rows;
  }

  /** Shows these, as they stand now, where the list stood. */
  void show(List<Place> places) {
    List<List<Place>> lines = new ArrayList<>();
    for (int at = 0; at < places.size(); at += across()) {
      lines.add(places.subList(at, Math.min(places.size(), at + across())));
    }
    rows.refill(lines);
  }

  /** Rings the shapes of these places wherever they are shown. */
  void mark(Set<Place> places) {
    marked = Set.copyOf(places);
  }

  private int across() {
    return context.touch().isLarge() ? 1 : 2;
  }

  private Region row(List<Place> pair) {
    List<Node> keys = new ArrayList<>();
    pair.forEach(place -> keys.add(key(place)));
    while (keys.size() < across()) {
      keys.add(new Region());
    }
    return Tiles.row(context.scale(), keys.toArray(Node[]::new));
  }

  private Node key(Place place) {
    return PlaceRow.of(
        context.touch(),
        context.state().layout(),
        place,
        Words.capital(EnginePages.name(context.state().layout(), place)),
        index.states().apply(place),
        marked.contains(place),
        () -> index.open(place));
  }
}
