package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.change.Plan;
import wherefrom.rules.consequence.Change;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** One change with all that follows from it, before anything is recorded, planned, or done. */
public final class ChangeScreen implements Screen {
  private final Desk desk;
  private final Change change;
  private final ChangesModel model;
  private final Pager<Region> rows;
  private final VBox view;
  private boolean offersWork;

  private ChangeScreen(Desk desk, Change change, String standing) {
    this.desk = desk;
    this.change = change;
    model = new ChangesModel(desk.getJob());
    rows = Pager.list(desk.touch(), row -> row);
    view = Panes.column(desk.scale(), desk.touch().text(standing), rows);
  }

  /** A change that nothing is recorded of yet. */
  public static ChangeScreen fresh(Desk desk, Change change) {
    ChangeScreen screen =
        new ChangeScreen(desk, change, "Nothing is recorded yet. This would follow:");
    if (ChangesModel.isFinding(change)) {
      screen.offer(screen.key("Record it", () -> screen.model.make(change)));
    } else {
      screen.offer(
          screen.key("Plan it", () -> screen.model.plan(change)),
          screen.key("It is done", () -> screen.model.make(change)));
    }
    return screen;
  }

  public static ChangeScreen planned(Desk desk, Plan plan) {
    ChangeScreen screen =
        new ChangeScreen(
            desk, plan.change(), "Only a plan: nothing is stopped yet. This would follow:");
    screen.offer(
        screen.key("It is done", () -> screen.model.carryOut(plan.number())),
        screen.key("Drop the plan", () -> screen.model.drop(plan.number())));
    return screen;
  }

  /** A change that was recorded. */
  public static ChangeScreen made(Desk desk, Change change) {
    return new ChangeScreen(desk, change, "Recorded. This follows:");
  }

  private TouchKey key(String words, Supplier<String> deed) {
    return desk.touch().primary(words, () -> act(deed));
  }

  private void offer(Node... keys) {
    offersWork = true;
    view.getChildren().add(Tiles.row(desk.scale(), keys));
  }

  private void act(Supplier<String> deed) {
    if (desk.attempt(() -> desk.say(deed.get()))) {
      desk.navigator().back();
    }
    desk.navigator().changed();
  }

  @Override
  public String title() {
    return Words.capital(change.words());
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    List<Region> lines = new ArrayList<>();
    model.preview(change).forEach(consequence -> lines.add(RuleRows.of(desk, consequence)));
    if (lines.isEmpty()) {
      lines.add(ListRow.told(desk.touch(), "Nothing follows", "No rule covers it here."));
    }
    model
        .cost(change)
        .ifPresent(words -> lines.add(0, ListRow.plain(desk.touch(), "Money", List.of(words))));
    if (offersWork) {
      model
          .findContradiction(change)
          .ifPresent(
              words ->
                  lines.add(0, ListRow.told(desk.touch(), "Another plan contradicts it", words)));
    }
    rows.refill(lines);
  }

  @Override
  public void changed() {
    shown();
  }
}
