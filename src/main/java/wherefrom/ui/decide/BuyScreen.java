package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.money.Purchase;
import wherefrom.job.money.Replacement;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;

/** What must be bought, with sizes from the readings and the reason for each line. */
public final class BuyScreen implements Screen {
  private final Desk desk;
  private final DecideModel model;
  private final Pager<Region> rows;

  public BuyScreen(Desk desk) {
    this.desk = desk;
    model = new DecideModel(desk.getJob());
    rows = Pager.list(desk.touch(), row -> row);
  }

  @Override
  public String title() {
    return "What to buy";
  }

  @Override
  public Region view() {
    return rows;
  }

  @Override
  public void shown() {
    List<Region> lines = new ArrayList<>();
    model.replacements().forEach(line -> lines.add(row(line)));
    model.purchases().forEach(thing -> lines.add(row(thing)));
    if (lines.isEmpty()) {
      lines.add(
          ListRow.told(
              desk.touch(),
              "Nothing to buy yet",
              "No rule asks for a new part. None is decided to be replaced."));
    }
    rows.refill(lines);
  }

  @Override
  public void changed() {
    shown();
  }

  private Region row(Replacement line) {
    String what = line.pieces() == 1 ? line.kind().word() : line.kind().plural();
    return ListRow.key(
        desk.touch(),
        line.pieces() + " " + what + ": press when it is here",
        List.of(
            "Size: " + line.size() + ".",
            "For: " + DecideModel.places(line.places()) + ".",
            "Because: " + line.reason()),
        () -> choose(line));
  }

  private Region row(Purchase thing) {
    return ListRow.plain(
        desk.touch(),
        thing.pieces() + " " + thing.what(),
        List.of(
            "Because: " + thing.reason() + ".",
            "It carries no tag. Note it as committed or paid under Money. Then it leaves"
                + " this list."));
  }

  private void choose(Replacement line) {
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(
                () -> takeOn(line),
                "They are here",
                "the old ones are retired; new tags, marked NEW"),
            new Choice<>(() -> {}, "Not yet", ""));
    desk.navigator()
        .open(() -> new ChoiceScreen<>(desk, "New " + line.kind().plural(), ways, Runnable::run));
  }

  private void takeOn(Replacement line) {
    if (desk.attempt(() -> desk.say(model.takeOn(line)))) {
      desk.navigator().show(ScreenId.PRINT_TAGS);
    }
  }
}
