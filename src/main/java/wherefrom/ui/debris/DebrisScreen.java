package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;
import wherefrom.rules.debris.DebrisMap;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.Opening;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.CellGrid;
import wherefrom.ui.takeapart.CautionScreen;

/** The drawn engine with its oil: tap where debris lies; what was found is written there. */
public final class DebrisScreen extends Page {
  private static final int COLUMNS = 3;

  private final DebrisModel model;
  private final OilDrawing drawing;
  private final CellGrid list;
  private final TagKey tag;
  private final KeyRow keys;

  public DebrisScreen(Desk desk) {
    super(desk, "Debris: tap where it lies");
    model = new DebrisModel(desk.getJob());
    drawing = new OilDrawing(touch(), this::look);
    list = new CellGrid(touch(), COLUMNS);
    tag = tag(() -> open(() -> new NextScreen(desk)));
    keys = KeyRow.of(desk);
    // Large letters leave the drawing's cells no room for a word.
    Region places = touch().isLarge() ? list.view() : drawing;
    lay(Panes.column(desk.scale(), places, new Foot(desk, tag, keys)));
  }

  private void look(DebrisPlace place) {
    open(() -> new LookScreen(desk, place));
  }

  @Override
  public String aside() {
    int open = model.map().openings().size();
    return open == 0 ? "" : open + " to open";
  }

  @Override
  protected void refresh() {
    List<Cell> cells = new ArrayList<>();
    for (DebrisPlace place : DebrisPlace.values()) {
      drawing.set(place, model.words(place), !model.at(place).isEmpty());
      cells.add(new Cell(Words.capital(place.words()), model.found(place), () -> look(place)));
    }
    list.show(cells);
    DebrisMap map = model.map();
    tag.setWords(
        touch().brief("What to open next: ", "Next: ") + map.openings().size(),
        first(map.openings()));
    keys.setActs(
        List.of(
            act(DebrisModel.words(map.question(), true), () -> open(() -> new MainsScreen(desk))),
            act("Cautions", () -> open(() -> new CautionScreen(desk, Caution.atOil())))));
  }

  private String first(List<Opening> openings) {
    return openings.stream()
        .findFirst()
        .map(opening -> touch().brief("first: " + opening.title(), ""))
        .orElse("");
  }
}
