package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.money.Purchase;
import wherefrom.job.money.Replacement;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.app.WordsScreen.Line;

/** What must be bought; pressed, a line tells its size, where it is for, and why. */
public final class BuyScreen extends ListPage {
  private final DecideModel model;

  public BuyScreen(ScreenContext context) {
    super(context, "What to buy");
    model = new DecideModel(context.getJob());
  }

  @Override
  public String aside() {
    int count = model.replacements().size() + model.purchases().size();
    return count == 1 ? "1 line" : count + " lines";
  }

  @Override
  protected String whenEmpty() {
    return "Nothing to buy yet. No rule asks for a new part. None is decided to be replaced.";
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    model.replacements().forEach(line -> rows.add(row(line)));
    model.purchases().forEach(thing -> rows.add(row(thing)));
    return rows;
  }

  private Region row(Replacement line) {
    return key(
        BuyLineScreen.title(line),
        touch().brief("Press when it is here.", ""),
        () -> open(() -> new BuyLineScreen(context, line)));
  }

  private Region row(Purchase thing) {
    String title = thing.pieces() + " " + thing.what().words();
    List<Line> lines =
        List.of(
            new Line("Because", thing.reason() + "."),
            new Line(
                "It carries no tag",
                "Note it as committed or paid under Money. Then it leaves this list."));
    return key(
        title,
        touch().brief("It carries no tag: note it under Money.", ""),
        () -> open(() -> new WordsScreen(context, title, lines)));
  }
}
