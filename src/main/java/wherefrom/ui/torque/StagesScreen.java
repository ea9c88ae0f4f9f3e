package wherefrom.ui.torque;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Pager;

/** The rounds over all bolts: torques first, then angles where the bolts are turned on. */
public final class StagesScreen extends ListPage {
  private final DraftModel model;

  StagesScreen(ScreenContext context, DraftModel model) {
    super(context, "Stages", false);
    this.model = model;
    layOut(
        new Foot(
            context,
            touch().tag("Add a stage", "", this::add),
            KeyRow.of(
                context,
                // Large letters leave room for the first alone.
                act("Done", () -> context.navigator().back()),
                act("Loosen", this::loosen),
                act("Remove the last", this::remove))));
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
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (String stage : model.stages()) {
      rows.add(told("Stage " + (rows.size() + 1) + ": " + stage));
    }
    rows.add(Pager.uncounted(told("Caution", Caution.TORQUE.sourced())));
    return rows;
  }
}
