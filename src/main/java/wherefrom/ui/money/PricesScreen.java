package wherefrom.ui.money;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;

/** The price of one piece of each thing: what decisions and plans are reckoned with. */
public final class PricesScreen implements Screen {
  private static final int MOST = 12;

  private final Desk desk;
  private final MoneyModel model;
  private final Pager<Region> rows;
  private final VBox view;

  PricesScreen(Desk desk, MoneyModel model) {
    this.desk = desk;
    this.model = model;
    rows = Pager.list(desk.touch(), row -> row);
    view = Panes.column(desk.scale(), rows, desk.touch().primary("Another thing", this::another));
  }

  @Override
  public String title() {
    return "Price of one piece";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    List<Region> lines = new ArrayList<>();
    model
        .prices()
        .forEach(
            (what, price) ->
                lines.add(
                    ListRow.key(
                        desk.touch(),
                        what + ": " + price.map(model::text).orElse("no price yet"),
                        List.of(),
                        () -> ask(what))));
    rows.refill(lines);
  }

  @Override
  public void changed() {
    shown();
  }

  private void another() {
    desk.navigator()
        .open(
            () ->
                new TextEntryScreen(
                    desk,
                    "What is it?",
                    "",
                    words -> {
                      if (!words.isBlank()) {
                        ask(words);
                      }
                    }));
  }

  private void ask(String what) {
    desk.navigator()
        .open(
            () ->
                NumberEntryScreen.size(
                    desk,
                    what,
                    "The price of one, in " + model.tender().letters() + ".",
                    MOST,
                    typed -> {
                      desk.attempt(() -> desk.say(model.setPrice(what, typed)));
                      desk.navigator().changed();
                    }));
  }
}
