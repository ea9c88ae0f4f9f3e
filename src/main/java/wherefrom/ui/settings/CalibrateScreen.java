package wherefrom.ui.settings;

import javafx.geometry.Pos;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** Measures the screen: a card of known size is held to it and a drawn one made to agree. */
public final class CalibrateScreen implements Screen {
  private static final int COARSE_PX = 10;

  private final Desk desk;
  private final CardModel model;
  private final Region card = new Region();
  private final VBox view;

  public CalibrateScreen(Desk desk) {
    this.desk = desk;
    model = new CardModel(desk.scale().pixelsPerMm());
    Touch touch = desk.touch();
    card.getStyleClass().add("bank-card");
    card.setManaged(false);
    Pane table = Panes.grow(new Pane(card));
    table.setMinSize(0, desk.scale().px(CardModel.HIGH_MM + 4));
    view =
        Panes.column(
            desk.scale(),
            touch
                .text(
                    "Hold a bank card in the white field's top left corner. Press until the field"
                    + " is exactly as wide as the card.")
                .align(Pos.CENTER_LEFT),
            table,
            Tiles.of(
                desk.scale(),
                5,
                touch.key("Much narrower", () -> step(-COARSE_PX)),
                touch.key("Narrower", () -> step(-1)),
                touch.key("Wider", () -> step(1)),
                touch.key("Much wider", () -> step(COARSE_PX)),
                touch.primary("It fits", this::keep)));
    draw();
  }

  private void step(int px) {
    model.step(px);
    draw();
  }

  private void draw() {
    card.resizeRelocate(0, 0, model.widePx(), model.highPx());
  }

  private void keep() {
    desk.navigator().back();
    desk.change(desk.settings().withPixelsPerMm(model.pixelsPerMm()));
    desk.navigator().changed();
  }

  @Override
  public String title() {
    return "Measure the screen";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
