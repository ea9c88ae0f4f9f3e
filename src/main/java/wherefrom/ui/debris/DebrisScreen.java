package wherefrom.ui.debris;

import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.Caution;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.takeapart.CautionScreen;

/** The drawn engine with its oil: tap where debris lies; what was found is written there. */
public final class DebrisScreen implements Screen {
  private final Desk desk;
  private final DebrisModel model;
  private final OilDrawing drawing;
  private final TouchKey mains;
  private final TouchKey next;
  private final VBox view;

  public DebrisScreen(Desk desk) {
    this.desk = desk;
    model = new DebrisModel(desk.getJob());
    drawing = new OilDrawing(desk.touch(), this::look);
    mains = desk.touch().primary("", this::mains);
    next = desk.touch().primary("", this::next);
    view =
        Panes.column(
            desk.scale(),
            drawing,
            Tiles.row(desk.scale(), mains, next, desk.touch().primary("Cautions", this::cautions)));
  }

  @Override
  public String title() {
    return "Debris: tap where it lies";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    boolean brief = desk.touch().isLarge();
    for (DebrisPlace place : DebrisPlace.values()) {
      drawing.set(place, model.words(place, brief), !model.at(place).isEmpty());
    }
    mains.setWords(DebrisModel.words(model.question(), brief));
    int open = model.map().openings().size();
    next.setWords((brief ? "Next: " : "What to open next: ") + open);
  }

  @Override
  public void changed() {
    shown();
  }

  private void look(DebrisPlace place) {
    desk.navigator().open(() -> new LookScreen(desk, place));
  }

  private void mains() {
    desk.navigator().open(() -> new MainsScreen(desk));
  }

  private void next() {
    desk.navigator().open(() -> new NextScreen(desk));
  }

  private void cautions() {
    desk.navigator().open(() -> new CautionScreen(desk, Caution.atOil()));
  }
}
