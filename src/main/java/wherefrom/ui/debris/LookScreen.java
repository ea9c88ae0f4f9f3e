package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** How does it look? Every look as a drawing with its words. */
public final class LookScreen implements Screen {
  private static final int PER_ROW = 3;
  private static final double DRAWN_MM = 13;

  private final Desk desk;
  private final DebrisPlace place;
  private final DebrisModel model;
  private final TouchKey note;
  private final VBox view;
  private String noted = "";

  public LookScreen(Desk desk, DebrisPlace place) {
    this.desk = desk;
    this.place = place;
    model = new DebrisModel(desk.getJob());
    note = desk.touch().key("", this::note);
    Pager<List<DebrisLook>> rows = Pager.stretched(desk.touch(), this::row);
    rows.setItems(threes());
    view = Panes.column(desk.scale(), rows, note);
  }

  private static List<List<DebrisLook>> threes() {
    List<List<DebrisLook>> rows = new ArrayList<>();
    List<DebrisLook> all = List.of(DebrisLook.values());
    for (int at = 0; at < all.size(); at += PER_ROW) {
      rows.add(all.subList(at, Math.min(all.size(), at + PER_ROW)));
    }
    return rows;
  }

  private Region row(List<DebrisLook> looks) {
    List<Node> keys = new ArrayList<>();
    for (DebrisLook look : looks) {
      String words = desk.touch().brief(look.words(), look.brief());
      keys.add(
          desk.touch()
              .primary(Words.capital(words), () -> found(look))
              .draw(LookDrawing.of(look, desk.scale().px(DRAWN_MM))));
    }
    return Panes.grow(new Tiles(desk.scale(), PER_ROW, Scale.GAP_MM, keys));
  }

  @Override
  public String title() {
    return Words.capital(place.words()) + ": what lies there?";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    note.setWords(noted.isEmpty() ? "Add a note" : "Note: " + noted);
  }

  private void note() {
    desk.navigator()
        .open(
            () ->
                new TextEntryScreen(desk, "Note on what was found", noted, typed -> noted = typed));
  }

  private void found(DebrisLook look) {
    if (desk.attempt(() -> desk.say(model.found(place, look, noted)))) {
      desk.navigator().back();
      desk.navigator().open(() -> new NextScreen(desk));
    }
  }
}
