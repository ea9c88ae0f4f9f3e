package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.change.Plan;
import wherefrom.rules.consequence.Change;
import wherefrom.text.Words;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.controls.TagKey;

/** Plans, changes and findings; what follows from them; what stands for a scanned part. */
public final class ChangesScreen extends ListPage implements Scannable {
  private static final String WANTED = "Scan a part's tag to see what applies to it.";

  private final ChangesModel model;
  private final TagKey tag;
  private final Foot foot;

  public ChangesScreen(Desk desk) {
    super(desk, "Changes");
    model = new ChangesModel(desk.getJob());
    tag = tag(() -> open(() -> StandingScreen.openChecks(desk)));
    List<KeyRow.Act> acts = new ArrayList<>();
    for (ChangesModel.Group group : ChangesModel.Group.values()) {
      acts.add(act(group.key(), () -> new ChangeQuestions(desk).ask(group)));
    }
    acts.add(act("Type a code", () -> ScannedPart.type(desk, WANTED, this::stands)));
    foot = new Foot(desk, tag, KeyRow.of(desk, 1, acts));
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
    tag.setWords("Open checks: " + open, touch().brief("pass or fail", ""));
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    model.plans().forEach(plan -> rows.add(row(plan)));
    rows.add(
        key(
            "Everything that applies: " + model.standing().size(),
            touch().brief("Forbidden, must be new, to be checked", ""),
            () -> open(() -> StandingScreen.all(desk))));
    model.made().forEach(change -> rows.add(row(change)));
    return rows;
  }

  private Region row(Plan plan) {
    return key(
        "Plan " + plan.number() + ": " + plan.change().words(),
        touch().brief(ChangesModel.standing(model.findContradiction(plan.change())), ""),
        () -> open(() -> ChangeScreen.planned(desk, plan)));
  }

  private Region row(Change change) {
    return key(
        Words.capital(change.words()),
        touch().brief(ChangesModel.isFinding(change) ? "Found" : "Done", ""),
        () -> open(() -> ChangeScreen.made(desk, change)));
  }

  private void stands(int item) {
    open(() -> StandingScreen.of(desk, item));
  }

  @Override
  public void scan(String text) {
    ScannedPart.find(desk, text, WANTED).ifPresent(this::stands);
  }
}
