package wherefrom.ui.money;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.rules.consequence.Article;
import wherefrom.text.Words;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;

/** The price of one piece of each thing: what decisions and plans are reckoned with. */
public final class PricesScreen extends Page {
  private static final int MOST = 12;

  private final MoneyModel model;
  private final Pager<Region> rows;

  PricesScreen(ScreenContext context, MoneyModel model) {
    super(context, "Price of one piece");
    this.model = model;
    rows = Pager.list(context.touch(), row -> row);
    lay(Panes.column(context.scale(), rows, touch().tag("Price another thing", "", this::another)));
  }

  @Override
  protected void refresh() {
    List<Region> lines = new ArrayList<>();
    model
        .prices()
        .forEach(
            (what, price) ->
                lines.add(
                    ListRow.key(
                        context.touch(),
                        Words.capital(what.words())
                            + ": "
                            + price.map(model::text).orElse("no price yet"),
                        List.of(),
                        () -> ask(what))));
    rows.refill(lines);
  }

  private void another() {
    open(
        () ->
            new TextEntryScreen(
                context,
                "What is it?",
                "",
                words -> {
                  if (!words.isBlank()) {
                    ask(Article.read(words));
                  }
                }));
  }

  private void ask(Article what) {
    open(
        () ->
            NumberEntryScreen.size(
                context,
                Words.capital(what.words()),
                "The price of one, in " + model.tender().letters() + ".",
                MOST,
                typed -> {
                  context.attempt(() -> context.say(model.setPrice(what, typed)));
                  context.navigator().changed();
                }));
  }
}
