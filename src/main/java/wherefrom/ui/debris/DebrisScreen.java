package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;
import wherefrom.rules.debris.DebrisMap;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.Opening;
import wherefrom.text.Words;
import wherefrom.ui.app.CautionScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.subject.Cell;
import wherefrom.ui.subject.CellGrid;

/** The drawn engine with its oil: tap where debris lies; what was found is written there. */
public final class DebrisScreen extends Page {
  private static final int COLUMNS = 3;

  private final DebrisModel model;
  private final OilDrawing drawing;
  private final CellGrid list;
  private final TagKey tag;
  private final KeyRow keys;
  private final Foot foot;

  public DebrisScreen(ScreenContext context) {
    super(context, "Debris: tap where it lies");
    model = new DebrisModel(context.getJob());
    drawing = new OilDrawing(touch(), this::look);
    list = new CellGrid(touch(), COLUMNS);
    tag = tag(() -> open(() -> new NextScreen(context)));
    keys = KeyRow.of(context);
    // Large letters leave the drawing's cells no room for a word.
    Region places = touch().isLarge() ? list : drawing;
    foot = new Foot(context, tag, keys);
    lay(Panes.column(context.scale(), places, foot));
  }

  private void look(DebrisPlace place) {
    open(() -> new LookScreen(context, place));
  }

  @Override
  public String aside() {
    int open = model.openings().size();
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
    List<Opening> openings = model.openings();
    boolean found = !model.finds().isEmpty();
    foot.offerTag(found);
    String next = touch().brief("What to open next: ", "Open next: ") + openings.size();
    tag.setWords(found ? next : "", found ? first(openings) : "");
    keys.setActs(
        List.of(
            act(
                DebrisModel.words(map.question(), true),
                () -> open(() -> new MainsScreen(context))),
            act("Cautions", () -> open(() -> new CautionScreen(context, Caution.atOil())))));
  }

  private String first(List<Opening> openings) {
    return openings.stream()
        .findFirst()
        .map(opening -> touch().brief("first: " + Words.small(opening.title()), ""))
        .orElse("");
  }
}
