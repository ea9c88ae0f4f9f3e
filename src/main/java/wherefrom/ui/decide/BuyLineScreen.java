package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.money.Buying;
import wherefrom.job.money.Replacement;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.TagKey;

/**
 * New parts of one kind to buy: their size, where they are for, why; pressed when they are here.
 */
public final class BuyLineScreen extends ListPage {
  private final Replacement line;
  private final DecideModel model;

  BuyLineScreen(ScreenContext context, Replacement line) {
    super(context, title(line));
    this.line = line;
    model = new DecideModel(context.getJob());
    TagKey tag = tag(this::takeOn);
    tag.setWords(
        line.pieces() == 1 ? "It is here" : "They are here",
        touch().brief(model.retires(line), ""));
    layOut(new Foot(context, tag, KeyRow.of(context)));
  }

  /** {@code 16 rod shells}. */
  static String title(Replacement line) {
    return line.counted();
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>(List.of(told("Size", Words.sentence(line.sizeWords()))));
    rows.add(told("For", Words.sentence(model.places(line))));
    rows.add(told("Because", Words.sentence(line.reason())));
    if (touch().isLarge()) {
      rows.add(told("When it is here", Words.sentence(model.retires(line))));
    }
    new Buying(context.state())
        .find(line)
        .ifPresent(
            goods ->
                rows.add(
                    key(
                        Words.capital(goods.orderWords()),
                        goods.arrivedWords() + ": offers, and what came",
                        () -> open(() -> new GoodsScreen(context, goods)))));
    return rows;
  }

  private void takeOn() {
    if (context.attempt(() -> context.say(model.takeOn(line)))) {
      context.navigator().back();
      context.navigator().show(ScreenId.PRINT_TAGS);
    }
  }
}
