package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.change.Plan;
import wherefrom.rules.consequence.Change;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;

/** Plans, changes and findings; what follows from them; what stands for a scanned part. */
public final class ChangesScreen implements Screen, Scannable {
  private static final String WANTED = "Scan a part's tag to see what applies to it.";

  private final Desk desk;
  private final ChangesModel model;
  private final Pager<Region> rows;
  private final VBox view;

  public ChangesScreen(Desk desk) {
    this.desk = desk;
    model = new ChangesModel(desk.getJob());
    rows = Pager.list(desk.touch(), row -> row);
    List<Node> keys = new ArrayList<>();
    for (ChangesModel.Group group : ChangesModel.Group.values()) {
      String brief = group.key().replace("Record a f", "F").replace("Plan a n", "N");
      keys.add(
          desk.touch()
              .primary(
                  desk.touch().brief(group.key(), brief),
                  () -> new ChangeQuestions(desk).ask(group)));
    }
    keys.add(
        desk.touch()
            .primary(
                desk.touch().brief("Type a code", "Type"),
                () -> ScannedPart.type(desk, WANTED, this::open)));
    view = Panes.column(desk.scale(), rows, Tiles.row(desk.scale(), keys.toArray(Node[]::new)));
  }

  @Override
  public String title() {
    return "Changes";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    List<Region> lines = new ArrayList<>();
    int open = model.openChecks().size();
    int all = model.standing().size();
    lines.add(
        row(
            open == 0 ? "No check is open" : "Open checks: " + open,
            "Look, then answer: pass or fail.",
            () -> desk.navigator().open(() -> StandingScreen.openChecks(desk))));
    lines.add(
        row(
            "Everything that applies: " + all,
            "What is forbidden, must be new, must be checked, and why.",
            () -> desk.navigator().open(() -> StandingScreen.all(desk))));
    model.plans().forEach(plan -> lines.add(row(plan)));
    model.made().forEach(change -> lines.add(row(change)));
    rows.refill(lines);
  }

  @Override
  public void changed() {
    shown();
  }

  private Region row(String heading, String words, Runnable act) {
    return ListRow.key(desk.touch(), heading, List.of(words), act);
  }

  private Region row(Plan plan) {
    return row(
        "Plan " + plan.number() + ": " + plan.change().words(),
        model.findContradiction(plan.change()).map(words -> words + " ").orElse("")
            + "Only a plan: nothing is stopped yet. Press to see it, do it, or drop it.",
        () -> desk.navigator().open(() -> ChangeScreen.planned(desk, plan)));
  }

  private Region row(Change change) {
    return row(
        (ChangesModel.isFinding(change) ? "Found: " : "Done: ") + change.words(),
        "Press to see what follows from it.",
        () -> desk.navigator().open(() -> ChangeScreen.made(desk, change)));
  }

  private void open(int item) {
    desk.navigator().open(() -> StandingScreen.of(desk, item));
  }

  @Override
  public void scan(String text) {
    ScannedPart.find(desk, text, WANTED).ifPresent(this::open);
  }
}
