package wherefrom.ui.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;
import wherefrom.job.shop.Washing;
import wherefrom.ui.app.CautionScreen;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;

/** Off for washing in numbered baskets, and back by scan or by count. */
public final class WashScreen extends Page implements Scannable {

  private final WashModel model;
  private final Taking taking;
  private final FitText said;
  private final TagKey basket;
  private final Pager<Region> rows;

  WashScreen(ScreenContext context, WashModel model) {
    super(context, "");
    this.model = model;
    Touch touch = context.touch();
    taking = new Taking(context, model);
    said = touch.small("");
    basket = touch.tag("", "", this::chooseBasket);
    rows = Pager.list(touch, row -> row);
    KeyRow others =
        KeyRow.of(
            context,
            new KeyRow.Act("Tap on engine", this::tap),
            new KeyRow.Act("Type code", taking::askCode),
            new KeyRow.Act("Count it back", this::count),
            new KeyRow.Act("Cautions", this::cautions));
    Foot keys = new Foot(context, basket, others);
    lay(Panes.column(context.scale(), said, rows, keys));
  }

  @Override
  public String title() {
    return "Washing, basket " + model.basket();
  }

  @Override
  protected void refresh() {
    said.setWords(taking.words());
    basket.setWords("Other basket", "");
    List<Region> lines = new ArrayList<>();
    model.rows().forEach(row -> lines.add(row(row)));
    if (lines.isEmpty()) {
      lines.add(
          ListRow.told(
              context.touch(),
              "No part is off for washing",
              "Take paper, plastic and string off first. Hang the tag on its hook."));
    }
    rows.refill(lines);
  }

  @Override
  public void scan(Scanned scanned) {
    taking.scan(scanned);
  }

  private Region row(WashModel.Row row) {
    return ListRow.key(
        context.touch(), row.heading(), List.of(row.contents()), () -> choose(row.number()));
  }

  private void choose(int number) {
    model.choose(number);
    taking.forget();
    context.navigator().changed();
  }

  private void chooseBasket() {
    number("The basket's number. Its printed tag can be scanned instead.", this::choose);
  }

  private void number(String question, Consumer<Integer> then) {
    open(
        () ->
            NumberEntryScreen.digits(
                context,
                "Basket " + model.basket(),
                question,
                3,
                typed -> then.accept(typed.isEmpty() ? 0 : Integer.parseInt(typed))));
  }

  private void count() {
    number(
        "The whole basket is back. How many pieces did you count?",
        pieces -> counted(pieces, Optional.empty()));
  }

  private void counted(int pieces, Optional<Boolean> tagsStayedOn) {
    context.attempt(
        () -> {
          Washing.Answer answer = model.count(pieces, tagsStayedOn);
          if (answer instanceof Washing.Answer.Asked) {
            askTags(pieces);
          } else {
            context.say(answer.sentence());
          }
        });
    taking.forget();
    context.navigator().changed();
  }

  /** A count alone does not tell parts of a kind apart. */
  private void askTags(int pieces) {
    List<Choice<Boolean>> choices =
        List.of(
            new Choice<>(true, "The tags stayed on", ""),
            new Choice<>(false, "Tags came off: measure which is which", ""));
    open(
        () ->
            new ChoiceScreen<>(
                context,
                "Did the tags stay on in the wash?",
                choices,
                stayed -> counted(pieces, Optional.of(stayed))));
  }

  private void tap() {
    open(() -> new TapScreen(context, title(), taking));
  }

  private void cautions() {
    open(() -> new CautionScreen(context, Caution.atWashing()));
  }
}
