package wherefrom.ui.debris;

import java.util.List;
import wherefrom.job.Caution;
import wherefrom.rules.debris.DebrisMap;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.Opening;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.takeapart.CautionScreen;

/** The drawn engine with its oil: tap where debris lies; what was found is written there. */
public final class DebrisScreen extends Page {
  private final DebrisModel model;
  private final OilDrawing drawing;
  private final TagKey tag;
  private final KeyRow keys;

  public DebrisScreen(Desk desk) {
    super(desk, "Debris: tap where it lies");
    model = new DebrisModel(desk.getJob());
    drawing = new OilDrawing(touch(), place -> open(() -> new LookScreen(desk, place)));
    tag = tag(() -> open(() -> new NextScreen(desk)));
    keys = KeyRow.of(desk);
    lay(Panes.column(desk.scale(), drawing, new Foot(desk, tag, keys)));
  }

  @Override
  public String aside() {
    int open = model.map().openings().size();
    return open == 0 ? "" : open + " to open";
  }

  @Override
  protected void refresh() {
    boolean brief = touch().isLarge();
    for (DebrisPlace place : DebrisPlace.values()) {
      drawing.set(place, model.words(place, brief), !model.at(place).isEmpty());
    }
    DebrisMap map = model.map();
    tag.setWords("What to open next: " + map.openings().size(), first(map.openings()));
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
