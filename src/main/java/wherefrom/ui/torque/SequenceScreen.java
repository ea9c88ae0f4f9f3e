package wherefrom.ui.torque;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.Panes;

/** The bolts are touched in the order of tightening; one that is not there is left out. */
public final class SequenceScreen extends Page {
  private final Consumer<List<Integer>> done;
  private final SequenceModel model;
  private final BoltGrid grid;

  SequenceScreen(ScreenContext context, DraftModel draft, Consumer<List<Integer>> done) {
    super(context, "Touch the bolts in order", false);
    this.done = done;
    this.model = draft.sequence();
    grid =
        new BoltGrid(
            context.touch(),
            draft.rows(),
            draft.columns(),
            position -> Optional.of(model.face(position)),
            this::touched);
    lay(
        Panes.column(
            context.scale(),
            grid,
            new Foot(
                context,
                touch().tag("That is all", "", this::finish),
                KeyRow.of(context, new KeyRow.Act("Undo one", this::back)))));
  }

  private void touched(int position) {
    model.touch(position);
    grid.draw();
  }

  private void back() {
    model.takeBack();
    grid.draw();
  }

  private void finish() {
    if (model.order().isEmpty()) {
      context.say("Touch the bolts first, in the order of tightening.");
      return;
    }
    context.navigator().back();
    done.accept(model.order());
  }
}
