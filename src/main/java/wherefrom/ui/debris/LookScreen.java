package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;

/** How does it look? Every look as a drawing with its words. */
public final class LookScreen extends Page {
  private static final int PER_ROW = 4;
  private static final int PER_ROW_LARGE = 2;
  private static final double DRAWN_MM = 9;

  private final DebrisPlace place;
  private final DebrisModel model;
  private final KeyRow keys;
  private String noted = "";

  public LookScreen(Desk desk, DebrisPlace place) {
    super(desk, Words.capital(place.words()) + ": what is it?");
    this.place = place;
    model = new DebrisModel(desk.getJob());
    keys = KeyRow.of(desk);
    Pager<List<DebrisLook>> rows = Pager.stretched(touch(), this::row);
    rows.setItems(inRows());
    lay(Panes.column(desk.scale(), rows, keys));
  }

  private int perRow() {
    return touch().isLarge() ? PER_ROW_LARGE : PER_ROW;
  }

  private List<List<DebrisLook>> inRows() {
    List<List<DebrisLook>> rows = new ArrayList<>();
    List<DebrisLook> all = List.of(DebrisLook.values());
    for (int at = 0; at < all.size(); at += perRow()) {
      rows.add(all.subList(at, Math.min(all.size(), at + perRow())));
    }
    return rows;
  }

  private Region row(List<DebrisLook> looks) {
    List<Node> keys = new ArrayList<>();
    for (DebrisLook look : looks) {
      keys.add(
          touch()
              .key(Words.capital(look.brief()), () -> found(look))
              .draw(LookDrawing.of(look, desk.scale().px(DRAWN_MM))));
      keys.get(keys.size() - 1).setAccessibleText(look.words());
    }
    while (keys.size() < perRow()) {
      keys.add(new Region());
    }
    return Panes.grow(Tiles.row(desk.scale(), keys.toArray(Node[]::new)));
  }

  @Override
  protected void refresh() {
    String words = noted.isEmpty() ? "Add a note" : "Note: " + noted;
    keys.setActs(List.of(act(words, this::note)));
  }

  private void note() {
    open(() -> new TextEntryScreen(desk, "Note on what was found", noted, typed -> noted = typed));
  }

  private void found(DebrisLook look) {
    if (desk.attempt(() -> desk.say(model.found(place, look, noted)))) {
      desk.navigator().back();
      open(() -> new NextScreen(desk));
    }
  }
}
