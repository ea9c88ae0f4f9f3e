package wherefrom.ui.torque;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;

/** The rounds over all bolts: torques first, then angles where the bolts are turned on. */
public final class StagesScreen extends Page {
  private final DraftModel model;
  private final Pager<Region> rows;

  StagesScreen(ScreenContext context, DraftModel model) {
    super(context, "Stages", false);
    this.model = model;
    rows = Pager.list(context.touch(), row -> row);
    lay(
        Panes.column(
            context.scale(),
            rows,
            new Foot(
                context,
                touch().tag("Add a stage", "", this::add),
                KeyRow.of(
                    context,
                    new KeyRow.Act("Loosen", this::loosen),
                    new KeyRow.Act("Remove the last", this::remove),
                    new KeyRow.Act("Done", () -> context.navigator().back())))));
  }

  private void add() {
    open(
        () ->
            new StageScreen(
                context,
                "Stage " + (model.stages().size() + 1),
                typed -> {
                  String trouble = model.add(typed);
                  if (!trouble.isEmpty()) {
                    context.say(trouble);
                  }
                  shown();
                }));
  }

  /** Bolts that are loosened between two torques. */
  private void loosen() {
    List<Choice<String>> choices =
        List.of(
            new Choice<>("loosen 90 deg", "A quarter turn", "90 degrees"),
            new Choice<>("loosen 180 deg", "Half a turn", "180 degrees"),
            new Choice<>("loosen", "Fully", "then a torque from the start"));
    open(() -> new ChoiceScreen<>(context, "Loosen by how much?", choices, this::add));
  }

  private void add(String stage) {
    model.add(stage);
    shown();
  }

  private void remove() {
    model.removeLastStage();
    shown();
  }

  @Override
  public void shown() {
    List<Region> lines = new ArrayList<>();
    for (String stage : model.stages()) {
      lines.add(ListRow.told(context.touch(), "Stage " + (lines.size() + 1), stage));
    }
    lines.add(
        ListRow.plain(
            context.touch(),
            "Caution",
            List.of(Caution.TORQUE.sentence(), Words.source(Caution.TORQUE.source()))));
    rows.refill(lines);
  }
}
