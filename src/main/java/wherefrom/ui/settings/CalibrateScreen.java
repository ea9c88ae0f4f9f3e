package wherefrom.ui.settings;

import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;

/** Measures the screen: a card of known size is held to it and a drawn one made to agree. */
public final class CalibrateScreen extends Page {
  private static final int COARSE_PX = 10;

  private final CardSizeModel model;
  private final Region card = new Region();

  public CalibrateScreen(ScreenContext context) {
    super(context, "Measure the screen", false);
    model = new CardSizeModel(context.scale().pixelsPerMm());
    Touch touch = context.touch();
    card.getStyleClass().add("bank-card");
    card.setManaged(false);
    Pane table = Panes.grow(new Pane(card));
    table.setMinSize(0, context.scale().px(CardSizeModel.HIGH_MM + 4));
    VBox side =
        Panes.column(
            context.scale(),
            touch.small(
                touch.brief(
                    "Hold a bank card to the left corner. Make the field as wide as the card.",
                    "Make it as wide as a bank card.")),
            Panes.grow(
                Tiles.of(
                    context.scale(),
                    2,
                    touch.key("−", () -> step(-1)),
                    touch.key("+", () -> step(1)),
                    touch.key("− −", () -> step(-COARSE_PX)),
                    touch.key("+ +", () -> step(COARSE_PX)))),
            touch.tag("It fits", "", this::keep));
    table.setMinWidth(context.scale().px(CardSizeModel.WIDE_MM + 2));
    lay(new Split(context.scale(), table, side));
    draw();
  }

  private void step(int px) {
    model.step(px);
    draw();
  }

  private void draw() {
    Panes.place(card, 0, 0, model.widePx(), model.highPx());
  }

  private void keep() {
    context.navigator().back();
    context.change(context.settings().withPixelsPerMm(model.pixelsPerMm()));
    context.navigator().changed();
  }
}
