package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.change.PlannedChange;
import wherefrom.rules.consequence.Change;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.TagKey;

/** Plans, changes and findings; what follows from them; what stands for a scanned part. */
public final class ChangesScreen extends ListPage implements Scannable {
  private static final String WANTED = "Scan a part's tag to see what applies to it.";

  private final ChangesModel model;
  private final TagKey tag;
  private final Foot foot;

  public ChangesScreen(ScreenContext context) {
    super(context, "Changes");
    model = new ChangesModel(context.getJob());
    tag = tag(() -> open(() -> StandingScreen.openChecks(context)));
    List<KeyRow.Act> acts = new ArrayList<>();
    for (ChangesModel.Group group : ChangesModel.Group.values()) {
      acts.add(act(group.key(), () -> new ChangeQuestions(context).ask(group)));
    }
    acts.add(act("Type a code", () -> ScannedPart.type(context, WANTED, this::stands)));
    foot = new Foot(context, tag, KeyRow.of(context, 1, acts));
    layOut(foot);
  }

  @Override
  public String aside() {
    int plans = model.plans().size();
    return plans == 1 ? "1 plan" : plans + " plans";
  }

  @Override
  protected void refresh() {
    super.refresh();
    int open = model.openChecks().size();
    foot.offerTag(open > 0);
    tag.setWords(
        touch().brief("Open checks: ", "Checks: ") + open, touch().brief("pass or fail", ""));
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    model.plans().forEach(plan -> rows.add(row(plan)));
    rows.add(
        spare(
            touch().brief("Everything that applies: ", "All that applies: ")
                + model.standing().size(),
            "What is forbidden, must be new, or wants a check",
            () -> open(() -> StandingScreen.all(context))));
    model.made().forEach(change -> rows.add(row(change)));
    return rows;
  }

  private Region row(PlannedChange plan) {
    return spare(
        "Plan " + plan.number() + ": " + plan.change().words(),
        ChangesModel.standing(model.findContradiction(plan.change())),
        () -> open(() -> ChangeScreen.planned(context, plan)));
  }

  private Region row(Change change) {
    return spare(
        Words.capital(change.words()),
        ChangesModel.isFinding(change) ? "Found" : "Done",
        () -> open(() -> ChangeScreen.made(context, change)));
  }

  private void stands(int item) {
    open(() -> StandingScreen.of(context, item));
  }

  @Override
  public void scan(Scanned scanned) {
    ScannedPart.find(context, scanned, WANTED).ifPresent(this::stands);
  }
}
