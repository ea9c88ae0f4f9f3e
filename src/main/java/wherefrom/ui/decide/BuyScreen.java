package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.job.money.BuyLine;
import wherefrom.job.money.Buying;
import wherefrom.job.money.Replacement;
import wherefrom.rules.consequence.Goods;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;

/** What must be bought; pressed, a line tells its size, where it is for, and why. */
public final class BuyScreen extends ListPage implements Scannable {
  private final DecideModel model;

  public BuyScreen(ScreenContext context) {
    super(context, "What to buy");
    model = new DecideModel(context.getJob());
    TagKey tag = tag(this::compare);
    tag.setWords("Compare offers", touch().brief("two side by side", ""));
    layOut(tag);
  }

  @Override
  public boolean takesNumbers() {
    return true;
  }

  @Override
  public void scan(Scanned scanned) {
    BoxScan.take(context, scanned);
  }

  @Override
  public String aside() {
    int count = new Buying(context.state()).lines().size();
    return count == 1 ? "1 line" : count + " lines";
  }

  @Override
  protected String whenEmpty() {
    return "Nothing to buy yet. Decide to replace a part, or plan work: what it needs stands here.";
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    model.replacements().forEach(line -> rows.add(row(line)));
    new Buying(context.state())
        .lines().stream().filter(line -> !hasTag(line)).forEach(line -> rows.add(row(line)));
    return rows;
  }

  private boolean hasTag(BuyLine line) {
    return model.replacements().stream()
        .anyMatch(one -> Goods.of(one.kind()).id().equals(line.what().id()));
  }

  /** Of more than two a person chooses which. */
  private void compare() {
    List<String> names = new Buying(context.state()).suppliers();
    if (names.size() < 2) {
      context.say("Type the offers of two suppliers first: press a line.");
    } else if (names.size() == 2) {
      open(() -> new OffersScreen(context, names.get(0), names.get(1)));
    } else {
      choose("Which offer?", names, first -> chooseSecond(names, first));
    }
  }

  private void chooseSecond(List<String> names, String first) {
    List<String> rest = names.stream().filter(name -> !name.equals(first)).toList();
    choose("Beside which?", rest, second -> open(() -> new OffersScreen(context, first, second)));
  }

  private void choose(String title, List<String> names, Consumer<String> then) {
    List<Choice<String>> choices =
        names.stream().map(name -> new Choice<>(name, name, "")).toList();
    open(() -> new ChoiceScreen<>(context, title, choices, then));
  }

  private Region row(Replacement line) {
    return spare(
        BuyLineScreen.title(line),
        "Press when it is here.",
        () -> open(() -> new BuyLineScreen(context, line)));
  }

  private Region row(BuyLine line) {
    return spare(
        Words.capital(line.words()),
        line.orderWords() + "; " + line.arrivedWords(),
        () -> open(() -> new GoodsScreen(context, line)));
  }
}
